namespace HandsFree.App.Session;

/// <summary>How a session ended.</summary>
internal enum SessionEnd
{
    /// <summary>The dialogue came to its end and said so.</summary>
    Goodbye,

    /// <summary>No more sound came from the microphone.</summary>
    MicrophoneEnded,
}
