using System.Globalization;
using HandsFree.App.Live;
using HandsFree.Audio.Devices;

namespace HandsFree.App.Checks;

/// <summary>The part of the self-test that needs sound devices.</summary>
/// <param name="settings">Which devices.</param>
/// <param name="time">The clock.</param>
/// <param name="keep">Keeps the settings; null, or why they can't be kept.</param>
internal sealed class SoundCheck(SoundSettings settings, TimeProvider time, Func<SoundSettings, string?> keep)
{
    private const string WayOn = "a round by keys needs none: handsfree round --keys";
    private const double LoudRoomDbfs = -40;

    /// <summary>Microphone, loudspeaker, the room's noise, the echo; and one sentence where somebody is there to speak it.</summary>
    /// <param name="practice">Runs the sentence; null where nobody speaks.</param>
    public IEnumerable<CheckResult> Run(Func<ICaptureStream, CheckResult>? practice)
    {
        (ISoundSystem? sound, string? whyNone) = SoundSystems.Open(time, settings.System);
        if (sound is null)
        {
            return [new("microphone", CheckState.Warning, $"{whyNone}; {WayOn}"), new("loudspeaker", CheckState.Warning, "none; what is said is shown")];
        }

        (ICaptureStream? microphone, SoundFault? noMicrophone) = sound.OpenCapture(settings.Microphone);
        (IPlaybackStream? loudspeaker, SoundFault? noLoudspeaker) = sound.OpenPlayback(settings.Loudspeaker);
        using ICaptureStream? first = microphone;
        using IPlaybackStream? second = loudspeaker;
        List<CheckResult> results =
        [
            microphone is null ? new("microphone", CheckState.Warning, $"{noMicrophone!.Text}; {WayOn}") : new("microphone", CheckState.Ok, microphone.Device),
            loudspeaker is null ? new("loudspeaker", CheckState.Warning, $"{noLoudspeaker!.Text}; what is said is shown") : new("loudspeaker", CheckState.Ok, loudspeaker.Device),
        ];
        if (microphone is not null)
        {
            results.AddRange(Measured(microphone, loudspeaker));
            results.AddRange(practice is null ? [] : [practice(microphone)]);
        }

        return results;
    }

    private IEnumerable<CheckResult> Measured(ICaptureStream microphone, IPlaybackStream? loudspeaker)
    {
        SoundProbe probe = new(microphone, loudspeaker, time);
        probe.Run();
        if (probe.Fault is { } fault)
        {
            yield return new("sound", CheckState.Warning, fault.Text);
            yield break;
        }

        string noise = string.Create(CultureInfo.InvariantCulture, $"{probe.NoiseDbfs:0} dBFS");
        yield return probe.NoiseDbfs > LoudRoomDbfs
            ? new("noise", CheckState.Warning, $"{noise}: loud; take a headset, or a quieter place")
            : new("noise", CheckState.Ok, noise);
        if (loudspeaker is not null)
        {
            yield return EchoOf(probe);
        }
    }

    private CheckResult EchoOf(SoundProbe probe)
    {
        if (probe.Echo is not { } echo)
        {
            return new("echo", CheckState.Ok, "the microphone does not hear the loudspeaker (an earpiece, or it is turned down)");
        }

        int milliseconds = (int)Math.Ceiling(echo.TotalMilliseconds);
        string? unkept = keep(settings with { EchoMilliseconds = milliseconds });
        return unkept is null
            ? new("echo", CheckState.Ok, $"the loudspeaker is heard after {milliseconds} ms; kept for this machine")
            : new("echo", CheckState.Warning, $"the loudspeaker is heard after {milliseconds} ms; {unkept}");
    }
}
