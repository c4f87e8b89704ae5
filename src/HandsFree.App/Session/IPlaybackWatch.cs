namespace HandsFree.App.Session;

/// <summary>Is told by a loudspeaker, on the loudspeaker's thread.</summary>
internal interface IPlaybackWatch
{
    /// <summary>The first sound after quiet begins.</summary>
    void Started(DateTimeOffset at);

    /// <summary>The last sample was handed to the device and nothing waits, or all was silenced.</summary>
    void Ended(DateTimeOffset at);
}
