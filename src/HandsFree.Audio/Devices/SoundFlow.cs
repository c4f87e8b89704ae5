namespace HandsFree.Audio.Devices;

/// <summary>Which way the sound goes.</summary>
public enum SoundFlow
{
    /// <summary>From a microphone.</summary>
    Capture,

    /// <summary>To a loudspeaker or an earpiece.</summary>
    Playback,
}
