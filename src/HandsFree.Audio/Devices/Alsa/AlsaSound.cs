using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace HandsFree.Audio.Devices.Alsa;

/// <summary>Linux without a sound server, through ALSA. Its devices never move; a program that has one has it for itself.</summary>
/// <param name="time">The clock of the frames' times.</param>
public sealed class AlsaSound(TimeProvider time) : ISoundSystem
{
    // What is wrong comes back as a value; ALSA's own lines on stderr would go across the screen.
    static unsafe AlsaSound() => _ = AlsaNative.snd_lib_error_set_handler(&Silent);

    /// <inheritdoc/>
    public string Name => "alsa";

    /// <summary>Null where the library is here, else one line that says what is missing.</summary>
    public static string? WhyNot() =>
        !OperatingSystem.IsLinux() ? "ALSA is used on Linux only"
        : NativeLibrary.TryLoad(AlsaNative.Library, typeof(AlsaSound).Assembly, null, out _) ? null
        : $"ALSA's library {AlsaNative.Library} is not installed; install the package libasound2";

    /// <inheritdoc/>
    public (IReadOnlyList<SoundDevice> Devices, SoundFault? Fault) List() => AlsaDevices.List();

    /// <inheritdoc/>
    public (ICaptureStream? Stream, SoundFault? Fault) OpenCapture(string? device)
    {
        (AlsaStream? stream, SoundFault? fault) = AlsaStream.Open(SoundFlow.Capture, device);
        if (stream is null)
        {
            return (null, fault);
        }

        int begun = AlsaNative.snd_pcm_start(stream.Handle);
        if (begun >= 0)
        {
            return (new AlsaCapture(stream, time), null);
        }

        stream.Dispose();
        return (null, AlsaFaults.Of(begun, stream.Device));
    }

    /// <inheritdoc/>
    public (IPlaybackStream? Stream, SoundFault? Fault) OpenPlayback(string? device) => AlsaStream.Open(SoundFlow.Playback, device) switch
    {
        ({ } stream, _) => (new AlsaPlayback(stream), null),
        (_, var fault) => (null, fault),
    };

    // The handler has further arguments of any number, which are left alone.
    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void Silent(nint file, int line, nint function, int error, nint format)
    {
        // The error comes back from the call itself.
    }
}
