using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Pulse;

/// <summary>Linux through PulseAudio's client library, which PipeWire serves too. Not through its simple form: that one can neither
/// pin a stream to its device nor see that it was moved.</summary>
/// <param name="time">The clock of the frames' times.</param>
/// <param name="server">As PULSE_SERVER names it; null for that, or the user's own.</param>
public sealed class PulseSound(TimeProvider time, string? server = null) : ISoundSystem
{
    /// <inheritdoc/>
    public string Name => "pulse";

    /// <summary>Null where the library is here, else one line that says what is missing.</summary>
    public static string? WhyNot() =>
        !OperatingSystem.IsLinux() ? "PulseAudio is used on Linux only"
        : NativeLibrary.TryLoad(PulseNative.Library, typeof(PulseSound).Assembly, null, out _) ? null
        : $"PulseAudio's library {PulseNative.Library} is not installed; install the package libpulse0";

    /// <inheritdoc/>
    public (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List()
    {
        (PulseConnection? connection, SoundFault? fault) = PulseConnection.Open(server, time);
        if (connection is null)
        {
            return ([], fault);
        }

        using (connection)
        {
            return (PulseDevices.List(connection), null);
        }
    }

    /// <inheritdoc/>
    public (ICaptureStream? Stream, SoundFault? Fault) OpenCapture(string? device) =>
        PulseStream.Open(server, time, SoundFlow.Capture, device, PulseCapture.Sizes) switch
        {
            ({ } stream, _) => (new PulseCapture(stream, time), null),
            (_, var fault) => (null, fault),
        };

    /// <inheritdoc/>
    public (IPlaybackStream? Stream, SoundFault? Fault) OpenPlayback(string? device) =>
        PulseStream.Open(server, time, SoundFlow.Playback, device, PulsePlayback.Sizes) switch
        {
            ({ } stream, _) => (new PulsePlayback(stream, time), null),
            (_, var fault) => (null, fault),
        };
}
