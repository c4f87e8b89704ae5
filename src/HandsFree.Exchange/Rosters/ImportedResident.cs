using HandsFree.Core.Residents;

namespace HandsFree.Exchange.Rosters;

/// <summary>A resident as a file tells of her.</summary>
/// <param name="Resident">What the file says.</param>
/// <param name="Given">The columns of <see cref="RosterColumns"/> that the file speaks of; it says nothing of the others.</param>
/// <param name="Where">Where in the file, in words: "line 3".</param>
public sealed record ImportedResident(Resident Resident, IReadOnlySet<string> Given, string Where);
