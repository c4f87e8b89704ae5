using HandsFree.Store.Keys;

namespace HandsFree.Store.Journaling;

/// <summary>With what a journal is opened.</summary>
/// <param name="States">The folder in which this device keeps its secrets, one folder for each journal; not where the journal lies.</param>
/// <param name="Credential">What unlocks it. A journal without people is unlocked by its device whatever is given.</param>
/// <param name="Time">For the waits after wrong PINs.</param>
public sealed record JournalAccess(string States, Credential Credential, TimeProvider Time);
