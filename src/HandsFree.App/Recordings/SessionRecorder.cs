using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.Audio.Wav;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;

namespace HandsFree.App.Recordings;

/// <summary>Keeps the sound of what was saved: of a reading what was said and its confirmation, of the rest what was said. What led to
/// nothing is never on the disk.</summary>
internal sealed class SessionRecorder : ISessionRecorder
{
    private const int Remembered = 16;

    private readonly HomeJournal journal;
    private readonly TimeSpan kept;
    private readonly Queue<(DateTimeOffset At, ReadOnlyMemory<float> Samples)> heard = [];

    private SessionRecorder(HomeJournal journal, TimeSpan kept) => (this.journal, this.kept) = (journal, kept);

    /// <summary>A recorder; null where the home keeps no recordings.</summary>
    public static SessionRecorder? For(Home home, HomeJournal journal)
    {
        if (home.Settings.KeepingAudio is not { } keeping)
        {
            return null;
        }

        HomeFolder.Make(home.Folder.AudioFolder);
        return new SessionRecorder(journal, TimeSpan.FromDays(keeping.Days));
    }

    /// <inheritdoc/>
    public void Heard(DateTimeOffset at, ReadOnlyMemory<float> samples)
    {
        if (samples.IsEmpty)
        {
            return;
        }

        heard.Enqueue((at, samples));
        if (heard.Count > Remembered)
        {
            heard.Dequeue();
        }
    }

    /// <inheritdoc/>
    public string? Saved(IReadOnlyList<JournalEvent> events)
    {
        try
        {
            foreach ((JournalEvent happened, Heard said) in events.SelectMany(Sayings))
            {
                if (heard.FirstOrDefault(h => h.At == said.At) is { Samples.IsEmpty: false } sound)
                {
                    Keep(happened, sound.At, sound.Samples.Span);
                }
            }

            return null;
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return $"a recording was not kept ({wrong.Message.ReplaceLineEndings(" ")})";
        }
    }

    private static IEnumerable<(JournalEvent Event, Heard Said)> Sayings(JournalEvent happened) => happened switch
    {
        ReadingRecorded e => [(e, e.Confirmed.ReadBack.Understood.Heard), (e, e.Confirmed.Confirmation)],
        NotTakenRecorded e => [(e, e.Heard)],
        _ => [],
    };

    private void Keep(JournalEvent happened, DateTimeOffset at, ReadOnlySpan<float> samples)
    {
        using MemoryStream wav = new();
        WavWriter.Write(wav, samples);
        DateTimeOffset until = DateTimeOffset.FromUnixTimeSeconds((happened.At + kept).ToUnixTimeSeconds());
        string name = journal.Recordings.Keep(wav.ToArray(), until);
        double seconds = Math.Round(Audio.SampleTime.Of(samples.Length).TotalSeconds, 2);
        journal.Desk.Write((id, written) => new AudioKept(id, happened.Person, written, name, happened.Id, at, seconds, until));
    }
}
