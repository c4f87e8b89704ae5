using System.Globalization;
using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Outgoing;
using HandsFree.Exchange.Tables;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Exports;

/// <summary>Takes a part of the record out of the program. That it is taken out, by whom, to where and why, stands in the journal first.</summary>
internal sealed class ExportDesk
{
    private readonly HomeJournal journal;
    private readonly Home home;
    private readonly CommandHost host;
    private readonly string because;

    private ExportDesk(HomeJournal journal, Home home, CommandHost host, string because) =>
        (this.journal, this.home, this.host, this.because) = (journal, home, host, because);

    /// <summary>The home.</summary>
    public Home Home => home;

    /// <summary>Does the work on the home's journal.</summary>
    /// <param name="services">The home, and who unlocks.</param>
    /// <param name="host">Says what was done or what is wrong.</param>
    /// <param name="because">Why the record is taken out.</param>
    /// <param name="work">Returns an exit code.</param>
    public static int With(IServiceProvider services, CommandHost host, string because, Func<ExportDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return string.IsNullOrWhiteSpace(because)
            ? host.Refuse("--because is empty; write why the record is taken out, it stands in the journal")
            : !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal => journal.Holder is { Role: Role.Aide }
                ? host.Refuse("an aide takes no record out; a nurse or a supervisor does")
                : work(new ExportDesk(journal, home, host, because.Trim())));
    }

    /// <summary>The entries of the whole record with their numbers.</summary>
    public IEnumerable<(long Number, JournalEvent Event)> Entries() => journal.Entries.Select(e => (e.Sequence, HomeJournal.Decoded(e)));

    /// <summary>The residents of a unit, all where none is named; or what is wrong.</summary>
    public (IReadOnlySet<string>? Residents, string? Wrong) Unit(string? unit) => unit switch
    {
        null => (null, null),
        _ when home.Roster.Units.Contains(unit, StringComparer.OrdinalIgnoreCase) =>
            (home.Roster.Residents.Where(r => string.Equals(r.Unit, unit, StringComparison.OrdinalIgnoreCase)).Select(r => r.Id).ToHashSet(), null),
        _ => (null, $"--unit is \"{unit}\"; {(home.Roster.Units.Count == 0 ? "the roster names no units" : $"the roster has: {string.Join(", ", home.Roster.Units)}")}"),
    };

    /// <summary>Writes into the journal that a part leaves the program.</summary>
    /// <param name="what">Which part in which form.</param>
    /// <param name="to">The file or the address.</param>
    public void TakenOut(string what, string to) =>
        journal.Desk.Write((id, at) => new RecordTakenOut(id, journal.Holder?.Person ?? home.Settings.Aide, at, what, to, because));

    /// <summary>The number of the last entry that a receiver has confirmed; 0 for none.</summary>
    public long Delivered(string to, string? unit) =>
        Entries().Select(e => e.Event).OfType<RecordDelivered>().Where(d => d.To == to && string.Equals(d.Unit, unit, StringComparison.OrdinalIgnoreCase)).Select(d => d.Through).LastOrDefault();

    /// <summary>Writes into the journal that a receiver has the record up to an entry.</summary>
    public void HasDelivered(string to, string? unit, long through) =>
        journal.Desk.Write((id, at) => new RecordDelivered(id, journal.Holder?.Person ?? home.Settings.Aide, at, to, unit, through));

    /// <summary>Writes a table into a file.</summary>
    /// <param name="what">"readings", in words for the journal.</param>
    /// <param name="file">The file; must not be there.</param>
    /// <param name="unit">Of one unit, or of all.</param>
    /// <param name="from">From a moment on, or all.</param>
    /// <param name="write">Writes the table and returns the number of its lines.</param>
    public int Table(string what, string file, string? unit, DateTimeOffset? from, Func<Stream, RecordPart, int> write)
    {
        (IReadOnlySet<string>? residents, string? wrong) = Unit(unit);
        if ((wrong ?? ExportFile.WhyNot(file)) is { } line)
        {
            return host.Refuse(line);
        }

        RecordPart part = new([.. Entries()], home.Settings.TimeZone, residents, from);
        TakenOut($"{what} as CSV{(unit is null ? "" : $", unit {unit}")}{(from is { } since ? $", from {since:yyyy-MM-dd HH:mm}" : "")}", file);
        int lines = 0;
        if (ExportFile.Write(file, stream => lines = write(stream, part)) is { } unwritten)
        {
            return host.Refuse(unwritten);
        }

        host.Surroundings.Out.WriteLine($"{file}: {lines} {what}");
        return ExitCodes.Done;
    }

    /// <summary>Writes the record as transactions of FHIR R4; of more than <see cref="OutgoingRecord.MostEntries"/> entries as several files,
    /// each of which can be sent by itself, in their order.</summary>
    /// <param name="file">FILE.json; several become FILE-0001.json and so on.</param>
    /// <param name="unit">Of one unit, or of all.</param>
    /// <param name="since">The number of the last entry that the receiver has.</param>
    /// <param name="newPatients">Bundles bring the Patients along.</param>
    public int Fhir(string file, string? unit, long since, bool newPatients)
    {
        string Name((int Index, int Count) of) => of.Count == 1 ? file
            : Path.Combine(Path.GetDirectoryName(file) ?? "", string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(file)}-{of.Index + 1:0000}{Path.GetExtension(file)}"));
        (IReadOnlySet<string>? residents, string? wrong) = Unit(unit);
        if ((wrong ?? ExportFile.WhyNot(file) ?? ExportFile.WhyNot(Name((0, 2)))) is { } line)
        {
            return host.Refuse(line);
        }

        TakenOut($"FHIR R4{(unit is null ? "" : $", unit {unit}")}{(since > 0 ? $", after entry {since}" : "")}", file);
        (int bundles, int resources, long through) = (0, 0, since);
        IEnumerable<Action<Stream>> contents = new FhirExport(home, Entries, newPatients).Bundles(since, residents).Select(outgoing => new Action<Stream>(stream =>
        {
            stream.Write(FhirText.Bytes(outgoing.Bundle));
            (bundles, resources, through) = (bundles + 1, resources + outgoing.Bundle.Entry.Count, outgoing.Through);
        }));
        if (ExportFile.WriteAll(contents, Name) is { } unwritten)
        {
            return host.Refuse(unwritten);
        }

        host.Surroundings.Out.WriteLine(bundles == 0
            ? $"There is nothing after entry {since}; no file was written."
            : $"{(bundles == 1 ? file : $"{Name((0, bundles))} to {Name((bundles - 1, bundles))}")}: {resources} resources, up to entry {through}; next time --since {through} once the receiver has them");
        return ExitCodes.Done;
    }
}
