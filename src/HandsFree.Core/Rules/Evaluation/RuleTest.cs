using HandsFree.Core.Residents;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Evaluation;

/// <summary>A figure and the threshold that it is held against; without a side the figure need only be there.</summary>
internal sealed record RuleTest(FigureKind Of)
{
    public Side? Side { get; init; }

    /// <summary>The threshold; of a temperature in degrees Fahrenheit.</summary>
    public decimal Number { get; init; }

    /// <summary>The threshold of a temperature spoken in degrees Celsius.</summary>
    public decimal Celsius { get; init; }

    /// <summary>The threshold is what was ordered for the resident.</summary>
    public bool Ordered { get; init; }

    public EarlierWindow? Earlier { get; init; }

    public bool IsLow => Side is Evaluation.Side.Below or Evaluation.Side.AtMost;

    public decimal Threshold(bool celsius) => celsius ? Celsius : Number;

    /// <summary>Whether an amount lies on the rule's side of the threshold.</summary>
    public bool Holds(Amount amount) => Beyond(amount.Number, Threshold(amount.Celsius));

    /// <summary>Whether the resident's usual value (in degrees Fahrenheit for a temperature) would itself lie beyond.</summary>
    public bool HoldsForUsual(decimal usual) => Beyond(usual, Number);

    /// <summary>Whether an amount lies beyond an ordered limit on the rule's side.</summary>
    public bool HoldsForOrder(Amount amount, decimal limit) =>
        Beyond(amount.Celsius ? amount.Number * 9 / 5 + 32 : amount.Number, limit);

    /// <summary>The latest order for this figure on this side that has not ended, or null.</summary>
    public OrderedLimit? OrderFor(DecisionContext context) => Side is null || Of.Limits is null
        ? null
        : context.Resident.OrderedLimits
            .Where(o => o.Value == Of.Limits && (IsLow ? o.Least : o.Greatest) is not null && (o.Until is null || context.At < o.Until))
            .MaxBy(o => o.OrderedOn);

    public decimal LimitOf(OrderedLimit order) => (IsLow ? order.Least : order.Greatest)!.Value;

    public string SideInWords => Side switch
    {
        Evaluation.Side.Above => "above",
        Evaluation.Side.AtLeast => "at least",
        Evaluation.Side.Below => "below",
        _ => "at most",
    };

    private bool Beyond(decimal number, decimal threshold) => Side switch
    {
        Evaluation.Side.Above => number > threshold,
        Evaluation.Side.AtLeast => number >= threshold,
        Evaluation.Side.Below => number < threshold,
        Evaluation.Side.AtMost => number <= threshold,
        _ => true,
    };
}
