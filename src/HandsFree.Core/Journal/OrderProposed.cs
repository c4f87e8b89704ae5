using HandsFree.Core.Residents;

namespace HandsFree.Core.Journal;

/// <summary>Another system has a limit for a resident. It is no order here until a nurse accepts it.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who imported it.</param>
/// <param name="At">When.</param>
/// <param name="Resident">The resident's id.</param>
/// <param name="Limit">The limit as it would stand on the roster.</param>
/// <param name="Source">Where it comes from: "orders.json, Goal/12".</param>
public sealed record OrderProposed(string Id, string Person, DateTimeOffset At, string Resident, OrderedLimit Limit, string Source) : JournalEvent(Id, Person, At);
