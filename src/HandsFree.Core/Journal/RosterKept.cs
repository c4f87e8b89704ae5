using HandsFree.Core.Quantities;

namespace HandsFree.Core.Journal;

/// <summary>The residents as they are from here on, with their ordered limits, so that a decision can be made again as it was made.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who imported them, or began the round.</param>
/// <param name="At">When.</param>
/// <param name="Hash">SHA-256 in hex of the units and the content.</param>
/// <param name="Content">The content of roster.json; null in a view that does not keep it.</param>
/// <param name="Temperature">The unit of its temperatures.</param>
/// <param name="Weight">The unit of its weights.</param>
public sealed record RosterKept(
    string Id, string Person, DateTimeOffset At, string Hash, string? Content, TemperatureUnit Temperature, WeightUnit Weight)
    : JournalEvent(Id, Person, At);
