using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>What libpulse's errors mean for whoever wears the microphone.</summary>
internal static class PulseFaults
{
    private const int Access = 1;
    private const int NoEntity = 5;
    private const int ConnectionRefused = 6;
    private const int AuthenticationKey = 9;
    private const int ConnectionTerminated = 11;
    private const int Killed = 12;
    private const int Busy = 26;

    /// <summary>Of an error code (pulse/def.h).</summary>
    /// <param name="error">The code.</param>
    /// <param name="what">The device, or "the sound server".</param>
    internal static SoundFault Of(int error, string what) => error switch
    {
        Access or AuthenticationKey => new(SoundProblem.Refused, $"{what}: access refused; run the program as the user who is logged in, and allow it the microphone"),
        NoEntity => new(SoundProblem.NoDevice, $"{what} is not there; plug it in, or choose another"),
        ConnectionRefused => new(SoundProblem.NoSystem, "no sound server runs here (PulseAudio or PipeWire); start one"),
        ConnectionTerminated => new(SoundProblem.Lost, "the sound server has ended; start it again"),
        Killed => new(SoundProblem.Lost, $"{what} is gone; plug it in again"),
        Busy => new(SoundProblem.Busy, $"{what} is used by another program; end that one"),
        _ => new(SoundProblem.Lost, $"{what}: {Marshal.PtrToStringUTF8(PulseNative.pa_strerror(error))}; see that the sound server runs"),
    };
}
