namespace HandsFree.Store.Journaling;

/// <summary>What verifying a journal without its key found.</summary>
/// <param name="Events">How many events there are.</param>
/// <param name="Findings">What is wrong, a line each, at most 20; empty where all is well.</param>
/// <param name="KnownHere">Whether this device knows the journal, so that its signatures were compared with the device's own key.</param>
/// <param name="Devices">How many devices have written it.</param>
public sealed record JournalVerdict(long Events, IReadOnlyList<string> Findings, bool KnownHere, int Devices);
