using HandsFree.Store.Sealing;

namespace HandsFree.Store.Journaling;

/// <summary>An event as it lies in the file, with the hash of the one before it.</summary>
/// <param name="Event">The event.</param>
/// <param name="Previous">The hash that it was chained to; empty where that event is missing.</param>
internal readonly record struct ChainedEvent(SealedEvent Event, byte[] Previous);
