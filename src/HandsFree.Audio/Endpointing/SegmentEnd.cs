namespace HandsFree.Audio.Endpointing;

/// <summary>Why a segment of speech ended where it did.</summary>
public enum SegmentEnd
{
    /// <summary>It has not: this is what there is after a short pause.</summary>
    Pause,

    /// <summary>Quiet as long as the time-out in force.</summary>
    Quiet,

    /// <summary>The longest speech was reached; the speaker went on.</summary>
    TooLong,

    /// <summary>The stream or the file ended.</summary>
    StreamEnded,
}
