namespace HandsFree.Audio.Devices;

/// <summary>How long a device may be silent. A sound server that was stopped gives no error, only no sound.</summary>
public static class Patience
{
    /// <summary>Without a frame for so long, a stream that ran has ended.</summary>
    public static readonly TimeSpan Running = TimeSpan.FromMilliseconds(500);

    /// <summary>For the first frame and for opening; a sleeping device needs up to two seconds.</summary>
    public static readonly TimeSpan Starting = TimeSpan.FromSeconds(3);

    /// <summary>For a frame to be taken; one that was quiet for a while may have to wake up.</summary>
    public static readonly TimeSpan Playing = TimeSpan.FromSeconds(3);

    /// <summary>What a device that brings nothing is told as.</summary>
    public static SoundFault Over(string device) =>
        new(SoundProblem.Stalled, $"no sound comes from \"{device}\" any more; plug it in again, or see that it is not muted and that the system's sound runs");
}
