namespace HandsFree.Store.Journaling;

/// <summary>One event as it lies in the journal.</summary>
/// <param name="Sequence">Its number: 1 for the first, each next one higher by one.</param>
/// <param name="Body">Its bytes, exactly as appended.</param>
/// <param name="Writer">Who wrote it; null as long as nobody was set up.</param>
public readonly record struct JournalEntry(long Sequence, ReadOnlyMemory<byte> Body, Writer? Writer = null);
