using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Homes;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A process that has done nothing else before it opens the journal, as the program does.</summary>
internal static class OpenerProcess
{
    /// <summary>Opens, and says how long it took.</summary>
    public static int Open(string folder, TextWriter output)
    {
        long begun = Stopwatch.GetTimestamp();
#pragma warning disable CA2000 // The folder stays: who started this process looks at it.
        using HomeJournal journal = new TrialFolder(folder).OpenHome();
#pragma warning restore CA2000
        TimeSpan opened = Stopwatch.GetElapsedTime(begun);
        int events = journal.Present().Count;
        TimeSpan present = Stopwatch.GetElapsedTime(begun);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{"  new process: open, then view kept",-52} {opened.TotalSeconds,12:0.##} s, then {(present - opened).TotalSeconds:0.##} s ({events} events, processor {Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds:0.##} s in all)"));
        return 0;
    }

    /// <summary>Starts this program to do that.</summary>
    public static IEnumerable<string> Lines(TrialFolder folder)
    {
        using Process opener = ThisProgram.Start(["journal-opener", folder.Path]);
        while (opener.StandardOutput.ReadLine() is { } line)
        {
            yield return line;
        }

        opener.WaitForExit();
    }
}
