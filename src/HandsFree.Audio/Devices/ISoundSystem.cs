namespace HandsFree.Audio.Devices;

/// <summary>The sound of an operating system.</summary>
public interface ISoundSystem
{
    /// <summary>"pulse", "alsa" or "wasapi".</summary>
    string Name { get; }

    /// <summary>All devices, or why they can't be listed.</summary>
    (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List();

    /// <summary>Opens a microphone.</summary>
    /// <param name="device">Its name; null for the default one, or the first that is no monitor.</param>
    (ICaptureStream? Stream, SoundFault? Fault) OpenCapture(string? device);

    /// <summary>Opens a loudspeaker.</summary>
    /// <param name="device">Its name; null for the default one.</param>
    (IPlaybackStream? Stream, SoundFault? Fault) OpenPlayback(string? device);
}
