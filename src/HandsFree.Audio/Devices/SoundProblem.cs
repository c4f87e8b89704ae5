namespace HandsFree.Audio.Devices;

/// <summary>What is wrong with a sound device.</summary>
public enum SoundProblem
{
    /// <summary>The system's sound can't be reached at all.</summary>
    NoSystem,

    /// <summary>There is no such device, or none.</summary>
    NoDevice,

    /// <summary>This user, or this program, may not use it.</summary>
    Refused,

    /// <summary>Another program has it for itself.</summary>
    Busy,

    /// <summary>It was there and is there no more: unplugged, switched off, the sound server ended.</summary>
    Lost,

    /// <summary>The system gave the stream another device: it is stopped, for that may be anything.</summary>
    Moved,

    /// <summary>It says that it runs, and no sound comes.</summary>
    Stalled,
}
