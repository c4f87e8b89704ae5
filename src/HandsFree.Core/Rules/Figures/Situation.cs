using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Figures;

/// <summary>One reading with all that a rule may look at.</summary>
/// <param name="Reading">The reading that is looked at.</param>
/// <param name="Context">What was known when it was taken.</param>
/// <param name="Decided">The reading that is being decided, where this is another of its set; null where it is that one.</param>
internal sealed record Situation(Reading Reading, DecisionContext Context, Situation? Decided = null)
{
    /// <summary>Readings of one resident less than this apart belong to one set; earlier ones of the same sign within it are
    /// repeats at the bedside (common practice, no source).</summary>
    public static readonly TimeSpan SameSet = TimeSpan.FromHours(1);

    public Circumstances How => Reading.How;

    public VitalSign Sign => Reading.Value.Sign;

    /// <summary>What the resident breathes: as said, else as usual for her, else room air.</summary>
    public OxygenSupply Oxygen => How.Oxygen ?? Context.Resident.UsualOxygen ?? OxygenSupply.RoomAir;

    public T? Value<T>()
        where T : Quantity => Reading.Value as T;

    /// <summary>Earlier readings of a sign, oldest first.</summary>
    public IEnumerable<PastReading> Past(VitalSign sign) =>
        Context.Earlier.Where(p => p.Reading.Value.Sign == sign && p.MeasuredAt <= Context.At);

    /// <summary>The situation of a sign in the set that is being decided: its latest reading; null where the set has none.</summary>
    public Situation? For(VitalSign sign)
    {
        if (sign == Sign)
        {
            return this;
        }

        var set = Decided ?? this;
        if (sign == set.Sign)
        {
            return set;
        }

        return set.Past(sign).LastOrDefault(p => set.Context.At - p.MeasuredAt < SameSet) is { } latest ? set.At(latest) : null;
    }

    /// <summary>The situation as it was with an earlier reading.</summary>
    public Situation At(PastReading past) => new(
        past.Reading,
        Context with { At = past.MeasuredAt, Earlier = [.. Context.Earlier.TakeWhile(p => p != past)] },
        Decided ?? this);
}
