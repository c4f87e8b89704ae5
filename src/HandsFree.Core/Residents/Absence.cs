namespace HandsFree.Core.Residents;

/// <summary>A resident who is not there: in hospital, with the family, at dialysis. Nothing is due of her, and nobody is measured in
/// her name.</summary>
/// <param name="Why">Where she is, as it is spoken: "hospital".</param>
/// <param name="From">The first day.</param>
/// <param name="Until">The last day; null where it is not known.</param>
public sealed record Absence(string Why, DateOnly From, DateOnly? Until)
{
    /// <summary>Whether the resident is away on that day.</summary>
    public bool On(DateOnly day) => day >= From && (Until is not { } last || day <= last);
}
