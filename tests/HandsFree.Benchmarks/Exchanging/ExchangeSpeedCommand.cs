using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Composition;
using HandsFree.App.Exports;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Outgoing;
using HandsFree.Exchange.Tables;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Exchanging;

/// <summary>"exchange-speed": how large a home's whole record is as FHIR and as tables, how long it takes, and how much memory.</summary>
internal static class ExchangeSpeedCommand
{
    private const double Million = 1_000_000;

    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Argument<string> home = new("HOME") { Description = "A home with its record; simulated-home makes one" };
        Option<string> what = new("--what") { Description = "One of them at a time, so that the most memory is its own", DefaultValueFactory = _ => "fhir" };
        what.AcceptOnlyFromAmong("fhir", "readings", "sets", "reports", "nothing");
        Command command = new("exchange-speed", "The whole record as FHIR R4 or as a table: size, seconds, memory; nothing is written into the journal or a file") { home, what };
        command.SetAction(parsed => Failures.Told(Console.Error, () => Run(parsed.GetValue(home)!, parsed.GetValue(what)!, Console.Out)));
        return command;
    }

    private static int Run(string homeFolder, string what, TextWriter output)
    {
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), homeFolder);
        if (!services.GetRequiredService<HomeOpening>().TryGet(out Home? home))
        {
            throw new InvalidDataException($"{homeFolder}: {services.GetRequiredService<HomeOpening>().Errors[0]}");
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(home.Folder, services.GetRequiredService<Unlocker>());
        using HomeJournal journal = opened ?? throw new InvalidDataException(error);
        IEnumerable<(long Number, JournalEvent Event)> Entries() => journal.Entries.Select(e => (e.Sequence, HomeJournal.Decoded(e)));
        long begun = Stopwatch.GetTimestamp();
        string result = what switch
        {
            "fhir" => Fhir(new FhirExport(home, Entries, newPatients: true)),
            "readings" => Table(ReadingTable.Write, Part()),
            "sets" => Table(SetTable.Write, Part()),
            "reports" => Table(ReportTable.Write, Part()),
            _ => $"{Entries().Count()} entries read",
        };
        double seconds = Stopwatch.GetElapsedTime(begun).TotalSeconds;
        using Process self = Process.GetCurrentProcess();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {result}; {seconds:0.0} s, at most {self.PeakWorkingSet64 / Million:0} MB of memory, {journal.Events.Count} entries"));
        return 0;

        RecordPart Part() => new([.. Entries()], home.Settings.TimeZone);
    }

    private static string Fhir(FhirExport export)
    {
        (int bundles, long bytes) = (0, 0);
        SortedDictionary<string, int> kinds = [];
        foreach (OutgoingBundle outgoing in export.Bundles(0, null))
        {
            bundles++;
            bytes += FhirText.Bytes(outgoing.Bundle).LongLength;
            foreach (string kind in outgoing.Bundle.Entry.Select(e => e.Resource!.TypeName))
            {
                kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
            }
        }

        return string.Create(CultureInfo.InvariantCulture, $"{bundles} bundles, {bytes / Million:0.0} MB, {string.Join(", ", kinds.Select(k => $"{k.Value} {k.Key}"))}");
    }

    private static string Table(Func<Stream, RecordPart, int> write, RecordPart part)
    {
        string file = Path.GetTempFileName();
        try
        {
            using FileStream target = new(file, FileMode.Create);
            int lines = write(target, part);
            return string.Create(CultureInfo.InvariantCulture, $"{lines} lines, {target.Length / Million:0.0} MB");
        }
        finally
        {
            File.Delete(file);
        }
    }
}
