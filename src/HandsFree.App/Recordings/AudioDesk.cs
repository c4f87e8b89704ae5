using System.Globalization;
using HandsFree.App.Commands;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Recordings;

/// <summary>What "handsfree journal audio" does. Only a supervisor hears or deletes recordings.</summary>
internal sealed class AudioDesk(HomeJournal journal, Home home, CommandHost host)
{
    /// <summary>Does the work with the journal of the home.</summary>
    public static int With(IServiceProvider services, CommandHost host, Func<AudioDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal => journal.Holder is null or { Role: Role.Supervisor }
                ? work(new AudioDesk(journal, home, host))
                : host.Refuse("only a supervisor hears, lists or deletes recordings"));
    }

    /// <summary>Every recording that is there, and whether any are kept at all.</summary>
    public int List()
    {
        journal.Desk.Viewed("journal audio list");
        HashSet<string> there = [.. journal.Recordings.All().Select(r => r.Name)];
        Dictionary<string, AudioKept> known = [];
        HashSet<string> deleted = [];
        foreach (JournalEvent happened in journal.All())
        {
            switch (happened)
            {
                case AudioKept kept:
                    known[kept.Clip] = kept;
                    break;
                case AudioDeleted gone:
                    deleted.Add(gone.Clip);
                    break;
            }
        }

        host.Surroundings.Out.WriteLine(home.Settings.KeepingAudio is { } keeping
            ? $"Recordings are kept for {keeping.Days} days: approved by {keeping.ApprovedBy}, {keeping.ApprovedOn:yyyy-MM-dd}."
            : "No recordings are kept (home.json has no \"keepAudio\").");
        foreach (AudioKept kept in known.Values.Where(k => there.Contains(k.Clip) || !deleted.Contains(k.Clip)))
        {
            string state = there.Contains(kept.Clip) ? $"until {Day(kept.Until)}" : "MISSING, and no deletion of it is in the journal";
            host.Surroundings.Out.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{kept.Clip}  {home.Settings.Here(kept.SpokenAt):yyyy-MM-dd HH:mm:ss}  {kept.Seconds:0.0} s  for {kept.For}  {state}"));
        }

        string[] stray = [.. there.Where(name => !known.ContainsKey(name)).Order(StringComparer.Ordinal)];
        foreach (string name in stray)
        {
            host.Surroundings.Out.WriteLine($"{name}  belongs to no event of this journal");
        }

        return known.Values.Any(k => !there.Contains(k.Clip) && !deleted.Contains(k.Clip)) || stray.Length > 0 ? ExitCodes.CheckFailed : ExitCodes.Done;
    }

    /// <summary>Writes a recording as a WAV file; the look is an event.</summary>
    public int PlayToFile(string name, string target)
    {
        if (Path.Exists(target))
        {
            return host.Refuse($"{target}: there is a file already, and nothing is overwritten; name another");
        }

        if (journal.Recordings.Open(name) is not { } wav)
        {
            return host.Refuse($"{name}: no such recording, or it is not as it was sealed; \"handsfree journal audio list\" shows which there are");
        }

        journal.Desk.Viewed($"recording {name}");
        if (AtomicFile.Write(target, wav, overwrite: false) is { } unwritten)
        {
            return host.Refuse(unwritten);
        }

        host.Surroundings.Out.WriteLine($"{target} is not sealed: delete it when it has been heard.");
        return ExitCodes.Done;
    }

    /// <summary>Deletes recordings: those whose days are over were deleted when the journal was opened; with all, the rest too.</summary>
    public int Purge(bool all)
    {
        (int deleted, IReadOnlyList<string> failed) = all
            ? RecordingPurge.All(journal)
            : (0, RecordingPurge.Overdue(journal, host.Surroundings.Time));
        host.Surroundings.Out.WriteLine(all
            ? $"{deleted} recordings deleted"
            : $"none whose days are over is left; {journal.Recordings.All().Count} recordings are kept");
        return failed.Count == 0 ? ExitCodes.Done : host.RefuseAll(failed);
    }

    private string Day(DateTimeOffset moment) => home.Settings.Here(moment).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
