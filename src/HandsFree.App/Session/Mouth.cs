using HandsFree.Core.Dialogue;
using HandsFree.Core.Files;
using HandsFree.Speech.Voice;

namespace HandsFree.App.Session;

/// <summary>Speaks: words through the voice, tones and sound through the loudspeaker. Used by the session loop alone; what the
/// loudspeaker tells comes on its own thread.</summary>
internal sealed class Mouth : IPlaybackWatch
{
    private readonly IVoice? voice;
    private readonly ILoudspeaker loudspeaker;
    private readonly EchoGate echo;
    private readonly EventQueue queue;

    /// <summary>A mouth.</summary>
    /// <param name="voice">Null where this machine has none: the text is shown all the same.</param>
    /// <param name="loudspeaker">Gets the sound.</param>
    /// <param name="echo">Is told when the program can be heard.</param>
    /// <param name="queue">Gets the end of each playback.</param>
    public Mouth(IVoice? voice, ILoudspeaker loudspeaker, EchoGate echo, EventQueue queue)
    {
        (this.voice, this.loudspeaker, this.echo, this.queue) = (voice, loudspeaker, echo, queue);
        loudspeaker.Connect(this);
    }

    /// <summary>Whether something is playing or waits.</summary>
    public bool IsBusy => loudspeaker.IsPlaying;

    /// <summary>Says a text after what is playing.</summary>
    /// <returns>Null, or why there is no sound; the text is to be shown in any case.</returns>
    public string? Say(string text)
    {
        try
        {
            // Sentence by sentence: the first is heard while the next is made.
            foreach (string sentence in Sentences.Of(text))
            {
                Play(voice?.Speak(PlainText.Spoken(sentence)).Samples ?? []);
            }

            return loudspeaker.WhySilent;
        }
        catch (VoiceException failure)
        {
            return failure.Message;
        }
    }

    /// <summary>Plays a tone after what is playing.</summary>
    public void Play(Tone tone) => Play(Tones.Of(tone));

    /// <summary>Is silent at once.</summary>
    public void Silence() => loudspeaker.Silence();

    /// <inheritdoc/>
    public void Started(DateTimeOffset at) => echo.Start(at);

    /// <inheritdoc/>
    public void Ended(DateTimeOffset at)
    {
        echo.End(at);
        queue.Post(new SessionEvent.PlaybackEnded());
    }

    private void Play(IReadOnlyList<float> samples)
    {
        if (samples.Count > 0)
        {
            loudspeaker.Play(samples);
        }
    }
}
