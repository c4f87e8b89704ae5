namespace HandsFree.Core.Journal;

/// <summary>A nurse has looked at a proposed limit. What she accepted stands on the roster.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The nurse.</param>
/// <param name="At">When.</param>
/// <param name="Proposal">The id of the <see cref="OrderProposed"/>.</param>
/// <param name="Accepted">Whether she took it.</param>
/// <param name="Reason">Why not, or what she says of it; null where nothing.</param>
public sealed record ProposalSettled(string Id, string Person, DateTimeOffset At, string Proposal, bool Accepted, string? Reason) : JournalEvent(Id, Person, At);
