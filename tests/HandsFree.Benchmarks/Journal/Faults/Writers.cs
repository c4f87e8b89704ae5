using System.Diagnostics;
using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>Three processes write one journal at the same time, as commands do beside a round: each takes its turn, none is refused, and
/// every number is announced once.</summary>
internal static class Writers
{
    private const int Processes = 3;

    public static string Try(int times)
    {
        using TrialFolder folder = TrialFolder.New();
        folder.Open().Dispose();
        int each = 10 * times;
        Process[] writers = [.. Enumerable.Range(0, Processes).Select(_ => WriterProcess.Start(folder.Path, each))];
        List<long> announced = [];
        foreach (string output in writers.Select(w => w.StandardOutput.ReadToEndAsync()).ToArray().Select(t => t.GetAwaiter().GetResult()))
        {
            announced.AddRange(output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => long.Parse(line, CultureInfo.InvariantCulture)));
        }

        foreach (Process writer in writers)
        {
            writer.WaitForExit();
            FaultMissedException.Unless(writer.ExitCode == 0, "a writer was refused");
            writer.Dispose();
        }

        announced.Sort();
        FaultMissedException.Unless(announced.SequenceEqual(Enumerable.Range(1, Processes * each).Select(i => (long)i)), "a number is missing, or announced twice");
        (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.File, folder.States);
        FaultMissedException.Unless(error is null && verdict!.Findings.Count == 0 && verdict.Events == announced.Count, "it does not verify");
        using Store.Journaling.Journal journal = folder.Open();
        FaultMissedException.Unless(journal.ReadFrom(1).All(e => JournalEventCodec.Decode(e.Body.Span) is not null), "an event can't be read");
        return $"held: {Processes} processes, {announced.Count} events, each announced once, 0 refused, 0 lost";
    }
}
