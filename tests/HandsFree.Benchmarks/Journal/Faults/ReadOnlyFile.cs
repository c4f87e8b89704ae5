using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>A journal that may not be written: refused with that reason, nothing changed; writable again, it goes on.</summary>
internal static class ReadOnlyFile
{
    public static string Try(int times)
    {
        using TrialFolder folder = TrialFolder.New();
        for (int time = 0; time < times; time++)
        {
            using (Store.Journaling.Journal journal = folder.Open())
            {
                journal.Append(Sound.Body(time + 1));
            }

            byte[] before = File.ReadAllBytes(folder.File);
            FileInfo file = new(folder.File) { IsReadOnly = true };
            JournalOpening opening = Store.Journaling.Journal.Open(folder.File, new JournalAccess(folder.States, new Credential.Device(), TimeProvider.System));
            opening.Journal?.Dispose();
            FaultMissedException.Unless(opening.Error?.Problem == JournalProblem.ReadOnly, $"opened, or refused as {opening.Error?.Problem}");
            FaultMissedException.Unless(File.ReadAllBytes(folder.File).AsSpan().SequenceEqual(before), "the file was changed");
            file.IsReadOnly = false;
        }

        Sound.Holds(folder, times);
        return $"held: {times} times refused as read-only, nothing changed, {times} events";
    }
}
