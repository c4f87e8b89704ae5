using HandsFree.Store.Keys;

namespace HandsFree.Store.Journaling;

/// <summary>With what a journal is opened.</summary>
/// <param name="States">The folder in which this device keeps its secrets, one folder for each journal; not where the journal lies.</param>
/// <param name="Credential">What unlocks it. A journal without people is unlocked by its device whatever is given.</param>
/// <param name="Time">For the waits after wrong PINs.</param>
public sealed record JournalAccess(string States, Credential Credential, TimeProvider Time)
{
    /// <summary>Takes the journal as it lies there, although this device has seen it further on or in no such place: for a supervisor, the
    /// recovery key, or the device as long as nobody is set up. Who does so writes it into the journal.</summary>
    public bool Accepts { get; init; }
}
