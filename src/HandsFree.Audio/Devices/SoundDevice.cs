namespace HandsFree.Audio.Devices;

/// <summary>A microphone or a loudspeaker.</summary>
/// <param name="Name">By which it is opened; stays the same over restarts.</param>
/// <param name="Description">For people.</param>
/// <param name="Flow">Which way the sound goes.</param>
/// <param name="IsMonitor">What a loudspeaker plays, offered as if it were a microphone: never taken unless it is named.</param>
/// <param name="IsDefault">Whether the system uses it where nobody chose.</param>
public sealed record SoundDevice(string Name, string Description, SoundFlow Flow, bool IsMonitor, bool IsDefault);
