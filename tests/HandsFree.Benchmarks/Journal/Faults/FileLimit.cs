using System.Diagnostics;
using System.Globalization;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>A writing process whose files may not grow beyond a limit (RLIMIT_FSIZE, "ulimit -f"): its write fails in the middle. Needs
/// no rights.</summary>
internal static class FileLimit
{
    public static string Try(int times)
    {
        if (OperatingSystem.IsWindows())
        {
            return "not tried: there is no such limit on Windows";
        }

        long events = 0;
        for (int time = 0; time < times; time++)
        {
            using TrialFolder folder = TrialFolder.New();
            folder.Open().Dispose();
            string limit = (160 + (time * 7)).ToString(CultureInfo.InvariantCulture);
            using Process writer = ThisProgram.Start(
                ["journal-writer", folder.Path], "sh", "-c", $"trap '' XFSZ; ulimit -f {limit}; exec \"$0\" \"$@\" 2>/dev/null");
            long announced = 0;
            while (writer.StandardOutput.ReadLine() is { } line)
            {
                announced = long.TryParse(line, CultureInfo.InvariantCulture, out long number) ? number : announced;
            }

            writer.WaitForExit();
            FaultMissedException.Unless(announced > 0, "the limited process wrote nothing");
            FaultMissedException.Unless(writer.ExitCode != 0, "the limited process ended as if nothing had been");
            Sound.Holds(folder, announced);
            events += announced;
        }

        return $"held: {times} writers stopped by a file limit, {events} events confirmed, 0 lost";
    }
}
