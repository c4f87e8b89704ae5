namespace HandsFree.Core.Residents;

/// <summary>A limit that a prescriber ordered for one resident. It replaces the home's and the default limit on that side of
/// that value.</summary>
/// <param name="Value">What is limited.</param>
/// <param name="Least">Values below are reported, as the rules for ordered limits say; null where the low side has no order.</param>
/// <param name="Greatest">Values above are reported; null where the high side has no order.</param>
/// <param name="OrderedBy">Who ordered it.</param>
/// <param name="OrderedOn">The day of the order.</param>
public sealed record OrderedLimit(LimitedValue Value, decimal? Least, decimal? Greatest, string OrderedBy, DateOnly OrderedOn)
{
    /// <summary>When a temporary limit (a nurse's plan) ends; null for one that stands until it is changed.</summary>
    public DateTimeOffset? Until { get; init; }
}
