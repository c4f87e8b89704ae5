using HandsFree.App.Session;
using HandsFree.Audio.Devices;

namespace HandsFree.App.Live;

/// <summary>Microphone and loudspeaker of a round, or what stands in for one that is not there.</summary>
internal sealed class LiveSound : IDisposable
{
    private static readonly TimeSpan Retry = TimeSpan.FromMilliseconds(500);

    private LiveSound(IMicrophone microphone, ILoudspeaker loudspeaker, IReadOnlyList<string> remarks) =>
        (Microphone, Loudspeaker, Remarks) = (microphone, loudspeaker, remarks);

    /// <summary>The microphone; silent where there is none.</summary>
    public IMicrophone Microphone { get; }

    /// <summary>The loudspeaker; silent where there is none.</summary>
    public ILoudspeaker Loudspeaker { get; }

    /// <summary>Whether somebody can be heard.</summary>
    public bool HasMicrophone => Microphone is LiveMicrophone;

    /// <summary>What is used, and what is missing and how to go on.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>Opens what is there. A microphone that is named and not there now is waited for; where none is, the keys remain.</summary>
    /// <param name="sound">The machine's sound, or null.</param>
    /// <param name="whyNone">Why there is none.</param>
    /// <param name="settings">The devices.</param>
    /// <param name="withMicrophone">False for the keys alone.</param>
    /// <param name="time">The clock.</param>
    public static LiveSound Open(ISoundSystem? sound, string? whyNone, SoundSettings settings, bool withMicrophone, TimeProvider time)
    {
        List<string> remarks = [];
        IMicrophone microphone = withMicrophone ? OpenMicrophone(sound, whyNone, settings.Microphone, time, remarks) : new SilentMicrophone();
        TimeSpan echo = TimeSpan.FromMilliseconds(settings.EchoMilliseconds ?? 0);
        (LiveLoudspeaker? loudspeaker, SoundFault? fault) = sound is null
            ? (null, new SoundFault(SoundProblem.NoSystem, whyNone!))
            : LiveLoudspeaker.Open(sound, settings.Loudspeaker, time, echo, Retry);
        remarks.Add(loudspeaker is null ? $"Nothing can be said aloud, it is shown: {fault!.Text}." : $"Loudspeaker: {loudspeaker.Device}.");
        return new LiveSound(microphone, loudspeaker is null ? new SilentLoudspeaker(fault!.Text) : loudspeaker, remarks);
    }

    /// <summary>Lets the devices run.</summary>
    public void Start(SessionLoop session)
    {
        (Microphone as LiveMicrophone)?.Start(why => session.DeviceChanged(SoundFlow.Capture, why));
        (Loudspeaker as LiveLoudspeaker)?.Start(why => session.DeviceChanged(SoundFlow.Playback, why));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Microphone.Dispose();
        Loudspeaker.Dispose();
    }

    private static IMicrophone OpenMicrophone(ISoundSystem? sound, string? whyNone, string? name, TimeProvider time, List<string> remarks)
    {
        (LiveMicrophone? microphone, SoundFault? fault) = sound is null
            ? (null, new SoundFault(SoundProblem.NoSystem, whyNone!))
            : LiveMicrophone.Open(sound, name, time, Retry);
        if (microphone is null && sound is not null && name is not null && fault!.Problem == SoundProblem.NoDevice)
        {
            remarks.Add($"Microphone: {fault.Text}. It is waited for; until then type what you would say.");
            return LiveMicrophone.Awaited(sound, name, time, Retry);
        }

        remarks.Add(microphone is null
            ? $"No microphone: {fault!.Text}. Type what you would say (\"room 12 bed b\", \"yes\", \"pulse 72\")."
            : $"Microphone: {microphone.Device}.");
        return microphone is null ? new SilentMicrophone() : microphone;
    }
}
