using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Alsa;

/// <summary>What ALSA's errors mean: negative numbers of errno.h.</summary>
internal static class AlsaFaults
{
    internal const int BrokenPipe = -32;
    private const int NoEntry = -2;
    private const int InOut = -5;
    private const int NoSuchAddress = -6;
    private const int Access = -13;
    private const int Busy = -16;
    private const int NoDevice = -19;

    /// <summary>Of opening: a device that is gone was not there.</summary>
    internal static SoundFault OfOpening(int error, string device) => Of(error == NoDevice ? NoEntry : error, device);

    internal static SoundFault Of(int error, string device) => error switch
    {
        NoEntry or NoSuchAddress => new(SoundProblem.NoDevice, $"\"{device}\" is not there; plug it in, or choose another"),
        Access => new(SoundProblem.Refused, $"\"{device}\": access refused; add the user to the group audio"),
        Busy => new(SoundProblem.Busy, $"\"{device}\" is used by another program; end that one"),
        NoDevice or InOut => new(SoundProblem.Lost, $"\"{device}\" is gone; plug it in again"),
        _ => new(SoundProblem.Lost, $"\"{device}\": {Marshal.PtrToStringUTF8(AlsaNative.snd_strerror(error))}"),
    };
}
