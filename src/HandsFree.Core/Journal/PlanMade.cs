using HandsFree.Core.Residents;

namespace HandsFree.Core.Journal;

/// <summary>A nurse's plan after a report: a limit for a time. Until it ends it takes the place of other limits on its sides; what is worse
/// than the plan is reported.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The nurse.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Report">The id of the report that it follows.</param>
/// <param name="Value">What is limited.</param>
/// <param name="Least">Values below are reported; null where the low side is not planned.</param>
/// <param name="Greatest">Values above are reported; null where the high side is not planned.</param>
/// <param name="Until">When it ends.</param>
/// <param name="Text">What is to be done meanwhile, in her words; may be empty.</param>
public sealed record PlanMade(
    string Id, string Person, DateTimeOffset At, string Resident, string Report, LimitedValue Value, decimal? Least, decimal? Greatest,
    DateTimeOffset Until, string Text)
    : JournalEvent(Id, Person, At)
{
    /// <summary>Who ordered a limit that lies beyond a report-now line; null where it does not.</summary>
    public string? OrderedBy { get; init; }

    /// <summary>The plan as the rules know it.</summary>
    public OrderedLimit ToLimit() => new(Value, Least, Greatest, Person, DateOnly.FromDateTime(At.DateTime)) { Until = Until };
}
