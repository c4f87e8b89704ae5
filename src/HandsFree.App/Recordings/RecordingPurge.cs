using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Recordings;

/// <summary>Deletes recordings. The event is written first: what is gone stands in the journal, and a deletion that was interrupted is done
/// again.</summary>
internal static class RecordingPurge
{
    /// <summary>Deletes those whose days are over.</summary>
    /// <returns>A line for each that could not be deleted.</returns>
    public static IReadOnlyList<string> Overdue(HomeJournal journal, TimeProvider time) =>
        Delete(journal, until => until is null || until <= time.GetUtcNow(), until => until is null ? "not whole" : "its days are over").Failed;

    /// <summary>Deletes all of them.</summary>
    /// <returns>How many, and a line for each that could not be deleted.</returns>
    public static (int Deleted, IReadOnlyList<string> Failed) All(HomeJournal journal) => Delete(journal, _ => true, _ => "asked for");

    private static (int Deleted, IReadOnlyList<string> Failed) Delete(
        HomeJournal journal, Func<DateTimeOffset?, bool> which, Func<DateTimeOffset?, string> why)
    {
        List<string> failed = [];
        int deleted = 0;
        try
        {
            foreach ((string name, DateTimeOffset? until) in journal.Recordings.All().Where(r => which(r.Until)))
            {
                journal.Desk.Write((id, at) => new AudioDeleted(id, journal.Holder?.Person ?? "device", at, name, why(until)));
                journal.Recordings.Delete(name);
                deleted++;
            }
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            failed.Add($"recordings that are to be deleted are still there ({wrong.Message.ReplaceLineEndings(" ")}); \"handsfree journal audio purge\" tries again");
        }

        return (deleted, failed);
    }
}
