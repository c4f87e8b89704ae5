namespace HandsFree.Speech.Voice;

/// <summary>A voice whose every failure is a <see cref="VoiceException"/>, so that who speaks can show the text and go on. The voices
/// are other people's programs and Windows' own: what they throw is not written down anywhere. One that does not come back is left
/// behind, and says nothing more until the program is started again.</summary>
/// <param name="voice">Speaks.</param>
/// <param name="patience">How long one text may take; more than the slowest voice needs for a long sentence.</param>
public sealed class SteadyVoice(IVoice voice, TimeSpan patience) : IVoice
{
    private volatile bool lost;

    /// <inheritdoc/>
    public string Name => voice.Name;

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        if (lost)
        {
            throw NoAnswer();
        }

        VoiceSound? sound = null;
        Exception? failure = null;
        Thread speaking = new(() => failure = Try(text, out sound)) { IsBackground = true, Name = "voice" };
        speaking.Start();
        if (!speaking.Join(patience))
        {
            lost = true;
            throw NoAnswer();
        }

        return failure switch
        {
            null => sound!,
            VoiceException known => throw known,
            _ => throw new VoiceException($"the voice {Name} failed ({failure.GetType().Name}: {failure.Message.ReplaceLineEndings(" ")}); \"handsfree check\" tries it", failure),
        };
    }

    private Exception? Try(string text, out VoiceSound? sound)
    {
        try
        {
            sound = voice.Speak(text);
            return null;
        }
#pragma warning disable CA1031 // Whatever it is, it is thrown again as what the port promises.
        catch (Exception any)
#pragma warning restore CA1031
        {
            sound = null;
            return any;
        }
    }

    private VoiceException NoAnswer() => new($"the voice {Name} does not answer; what is said is shown until the program is started again");
}
