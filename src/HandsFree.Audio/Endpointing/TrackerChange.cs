namespace HandsFree.Audio.Endpointing;

/// <summary>What a frame changed.</summary>
internal enum TrackerChange
{
    None,
    Started,
    Paused,
    Resumed,
    Ended,
    TooLong,
}
