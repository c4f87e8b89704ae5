using HandsFree.Audio.Devices.Alsa;
using HandsFree.Audio.Devices.Pulse;
using HandsFree.Audio.Devices.Wasapi;

namespace HandsFree.Audio.Devices;

/// <summary>The ways to the sound of this machine.</summary>
public static class SoundSystems
{
    /// <summary>No sound at all, by choice.</summary>
    public const string None = "none";

    /// <summary>Names that can be asked for.</summary>
    public static IReadOnlyList<string> Names { get; } = ["pulse", "alsa", "wasapi", None];

    /// <summary>The system of that name, or the best one: Windows' own; on Linux the sound server's where one answers, else ALSA's.</summary>
    /// <param name="time">The clock of the frames' times.</param>
    /// <param name="name">One of <see cref="Names"/>, or null.</param>
    /// <returns>The system, or null and one line that says why there is none and what to do.</returns>
    public static (ISoundSystem? System, string? WhyNone) Open(TimeProvider time, string? name = null) => name switch
    {
        "pulse" => PulseSound.WhyNot() is { } why ? (null, why) : (new PulseSound(time), null),
        "alsa" => AlsaSound.WhyNot() is { } why ? (null, why) : (new AlsaSound(time), null),
        "wasapi" => OperatingSystem.IsWindows() ? (new WasapiSound(time), null) : (null, "WASAPI is on Windows only; use pulse or alsa"),
        None => (null, "sound is switched off by choice"),
        null when OperatingSystem.IsWindows() => (new WasapiSound(time), null),
        null => OnLinux(time),
        _ => (null, $"there is no sound system \"{name}\"; use {string.Join(", ", Names)}"),
    };

    private static (ISoundSystem?, string?) OnLinux(TimeProvider time)
    {
        (ISoundSystem? pulse, string? noPulse) = Open(time, "pulse");
        string? silent = pulse?.List().Fault?.Text;
        if (pulse is not null && silent is null)
        {
            return (pulse, null);
        }

        (ISoundSystem? alsa, string? noAlsa) = Open(time, "alsa");
        (IReadOnlyList<SoundDevice> devices, SoundFault? fault) = alsa?.List() ?? ([], null);
        return devices.Count > 0
            ? (alsa, null)
            : (null, $"no sound here: {noPulse ?? silent}; {noAlsa ?? fault?.Text ?? "ALSA knows no sound card"}");
    }
}
