using System.Diagnostics;
using System.Globalization;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A process that dictates without end: events of a shift, each announced once it is flushed.</summary>
internal static class WriterProcess
{
    public static int Write(string folder, int count, TextWriter output)
    {
        // The folder stays: who started this process looks at it.
#pragma warning disable CA2000
        using Store.Journaling.Journal journal = new TrialFolder(folder).Open();
#pragma warning restore CA2000
        long first = journal.Count;
        for (long next = first; next < first + count; next++)
        {
            long written = journal.Append(JournalEventCodec.Encode(ShiftEvents.Event((int)next)));
            output.WriteLine(written.ToString(CultureInfo.InvariantCulture));
            output.Flush();
        }

        return 0;
    }

    /// <summary>Starts this program as a writer, under another program where one is named.</summary>
    public static Process Start(string folder, int? count, params string[] under) => ThisProgram.Start(
        ["journal-writer", folder, .. count is { } n ? new[] { "--count", n.ToString(CultureInfo.InvariantCulture) } : []], under);
}
