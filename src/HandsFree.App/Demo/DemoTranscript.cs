using System.Globalization;
using HandsFree.App.Demo.Outcome;
using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Demo;

/// <summary>Shows the dialogue as it runs: time, who, what. A line "saved #N" comes after the flush of entry N, never before.</summary>
internal sealed class DemoTranscript(Action<string> write) : ISessionWatcher, IRoomWatcher
{
    private readonly Lock gate = new();

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        switch (note)
        {
            case SessionNote.Said s:
                Line(s.At, "program", s.WhyUnheard is { } why ? $"{s.Text}  (not spoken: {why})" : s.Text);
                break;
            case SessionNote.Sounded s:
                Line(s.At, "program", Words(s.Tone));
                break;
            case SessionNote.Heard { Event: DialogueEvent.Utterance u } s:
                Line(s.At, "heard", string.Create(CultureInfo.InvariantCulture, $"{u.Words}  ({u.Probability:0.00})"));
                break;
            case SessionNote.Heard { Event: DialogueEvent.NotAReading } s:
                Line(s.At, "heard", "(speech that is nothing of what is listened for)");
                break;
            case SessionNote.Heard { Event: DialogueEvent.PartOfAReading } s:
                Line(s.At, "heard", "(a part of a reading)");
                break;
            case SessionNote.Kept s:
                Kept(s);
                break;
            case SessionNote.NotKept s:
                Line(s.At, "journal", $"not saved: {s.Why}");
                break;
        }
    }

    /// <inheritdoc/>
    public void Speaks(DateTimeOffset at, DemoClip clip) => Line(at, "aide", string.Create(
        CultureInfo.InvariantCulture,
        $"\"{clip.Text}\"  [{clip.Voice}{(clip.Noise is { } noise ? $", {noise.Kind} noise {noise.SnrDecibels} dB below" : "")}]"));

    /// <inheritdoc/>
    public void MovesOn(DateTimeOffset at) => Line(at, "", "(… she waits; the time is left out here …)");

    /// <inheritdoc/>
    public void Passed(ReadOnlySpan<float> aide, ReadOnlySpan<float> program)
    {
        // Sound is for the recording.
    }

    private void Kept(SessionNote.Kept kept)
    {
        for (int i = 0; i < kept.Events.Count; i++)
        {
            if (EntryLine.Of(kept.Events[i]) is { } line)
            {
                Line(kept.At, $"saved #{kept.FirstSequence + i}", line);
            }
        }
    }

    private void Line(DateTimeOffset at, string who, string text)
    {
        lock (gate)
        {
            write(string.Create(CultureInfo.InvariantCulture, $"{at:HH:mm:ss}  {who,-10}  {text}"));
        }
    }

    private static string Words(Tone tone) => tone switch
    {
        Tone.CountBegins => "(high tone: count from now)",
        Tone.CountEnds => "(low tone: the count is over)",
        Tone.Saved => "(rising tones: saved)",
        Tone.Ready => "(rising tones: ready)",
        Tone.NotSaved => "(three low tones: not saved)",
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "no such tone"),
    };
}
