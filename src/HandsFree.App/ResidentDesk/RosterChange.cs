namespace HandsFree.App.ResidentDesk;

/// <summary>What an import would change of one resident, as a line.</summary>
/// <param name="Kind">New, changed, or gone.</param>
/// <param name="Line">Who, and what.</param>
internal sealed record RosterChange(RosterChangeKind Kind, string Line);
