using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
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
}
