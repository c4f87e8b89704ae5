using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using System.Text.Json;

namespace HandsFree.App.Journals;

/// <summary>The last roster, settings and rules of a journal, and whether it was opened with the emergency key, kept in a sealed file beside it, so that a command need not read years to know
/// who lives in the home. Brought up to date from the events that came since; made anew where no file fits.</summary>
internal sealed class HomeViewFile(Journal journal, string path, PassedOver passedOver)
{
    private const int WorthKeeping = 200;

    /// <summary>What is in force.</summary>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    public HomeKept Read()
    {
        (long had, List<JournalEvent> last) = Load();
        long sequence = had;
        bool changed = false;
        foreach ((long number, JournalEvent happened) in passedOver.Readable(journal.ReadFrom(had + 1, PassedOver.Try)))
        {
            sequence = number;
            if (Key(happened) is { } key)
            {
                last.RemoveAll(other => Key(other) == key);
                last.Add(happened);
                changed = true;
            }
        }

        if (sequence > had && (changed || sequence - had >= WorthKeeping))
        {
            journal.SaveView(path, sequence, JsonSerializer.SerializeToUtf8Bytes(last.Select(JournalEventCodec.Encode)));
        }

        return HomeKept.Of(last);
    }

    private static string? Key(JournalEvent happened) => happened switch
    {
        RosterKept => "roster",
        HomeFileKept file => file.File,
        EmergencyOpened or EmergencyKeyMade => "emergency",
        _ => null,
    };

    private (long Sequence, List<JournalEvent> Last) Load() => journal.LoadView(path) is var (sequence, content)
        ? (sequence, [.. JsonSerializer.Deserialize<byte[][]>(content)!.Select(body => JournalEventCodec.Decode(body))])
        : (0, []);
}
