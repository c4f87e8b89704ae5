using HandsFree.Store.Keys;

namespace HandsFree.Store.Journaling;

/// <summary>What restoring a backup does, for the event that tells of it.</summary>
/// <param name="Events">How many events the backup has.</param>
/// <param name="Lost">How many events this device has seen that are not in it; 0 where it knows of none.</param>
/// <param name="OtherDevice">Whether another device wrote it.</param>
/// <param name="By">Who restores it; null as long as nobody is set up.</param>
public sealed record JournalRestoring(long Events, long Lost, bool OtherDevice, Holder? By);
