namespace HandsFree.App.Session;

/// <summary>How the microphone stands; while the program itself speaks nothing is heard in any of them.</summary>
internal enum MicrophoneState
{
    /// <summary>It is heard.</summary>
    Open,

    /// <summary>It is not heard until its key is pressed.</summary>
    Closed,

    /// <summary>It is gone.</summary>
    Lost,

    /// <summary>There is none: keys only.</summary>
    None,
}
