using System.Diagnostics;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>A real full disk: a file system of two megabytes (tmpfs; mounting must be permitted), with a ballast of another size each time,
/// so that another write fails. The append is refused with its reason; with space again it works; nothing confirmed is lost.</summary>
internal static class FullDisk
{
    private const int Megabytes = 2;

    public static string Try(int times)
    {
        using TrialFolder around = TrialFolder.New();
        string mount = Path.Combine(around.Path, "disk");
        Directory.CreateDirectory(mount);
        long events = 0;
        for (int time = 0; time < times; time++)
        {
            if (!Ran("mount", "-t", "tmpfs", "-o", $"size={Megabytes}m", "tmpfs", mount))
            {
                return "not tried: mounting a small file system is not permitted here; \"file limit\" was";
            }

            try
            {
                events += Fill(new TrialFolder(mount), mount, 300_000 + (time * 4096 * 7 / 2));
            }
            finally
            {
                Ran("umount", "-l", mount); // also where the trial ended in the middle, with files open
            }
        }

        return $"held: {times} full disks (tmpfs of {Megabytes} MB), {events} events confirmed, 0 lost, each refusal said \"the disk is full\"";
    }

    private static long Fill(TrialFolder folder, string mount, int ballast)
    {
        string extra = Path.Combine(folder.Path, "ballast");
        File.WriteAllBytes(extra, new byte[ballast]);
        long confirmed = 0;
        using (Store.Journaling.Journal journal = folder.Open())
        {
            JournalProblem? refused = null;
            while (refused is null)
            {
                refused = Append(journal, ref confirmed);
            }

            FaultMissedException.Unless(refused == JournalProblem.DiskFull, $"refused as {refused}");
            FaultMissedException.Unless(journal.Count == confirmed, $"{journal.Count} events, {confirmed} confirmed");
            File.Delete(extra);
            FaultMissedException.Unless(Append(journal, ref confirmed) is null, "refused with space again");
            while (Append(journal, ref confirmed) is null)
            {
                // Until it is full once more: it is closed so.
            }
        }

        // A check needs no space where the journal lies, but SQLite's shared memory file does. The place stays: the device remembers it.
        FaultMissedException.Unless(Ran("mount", "-o", $"remount,size={4 * Megabytes}m", mount), "the disk can't be made larger");
        return Sound.Holds(folder, confirmed);
    }

    private static JournalProblem? Append(Store.Journaling.Journal journal, ref long confirmed)
    {
        try
        {
            confirmed = journal.Append(Sound.Body(confirmed + 1));
            return null;
        }
        catch (JournalWriteException failure)
        {
            return failure.Problem;
        }
    }

    private static bool Ran(string program, params string[] arguments)
    {
        try
        {
            ProcessStartInfo start = new(program) { RedirectStandardError = true };
            foreach (string argument in arguments)
            {
                start.ArgumentList.Add(argument);
            }

            using Process process = Process.Start(start)!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
