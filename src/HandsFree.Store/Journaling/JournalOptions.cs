namespace HandsFree.Store.Journaling;

/// <summary>How a journal is opened.</summary>
public sealed record JournalOptions
{
    /// <summary>How long an append or an opening waits for another program that holds the file, in whole seconds,
    /// 1 to 60; 5 unless set.</summary>
    public int BusySeconds { get; init; } = 5;

    /// <summary>Largest size of the file in pages of 4096 bytes; 0, as it is unless set, leaves it to the disk. An append
    /// beyond it fails as on a full disk.</summary>
    public int PageLimit { get; init; }
}
