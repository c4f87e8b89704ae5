using HandsFree.App.Commands;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.People;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.Exchange.Fhir.Incoming;
using HandsFree.Exchange.Readings;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Imports;

/// <summary>Takes what another system recorded into the journal: past readings, marked as such, and limits as proposals.</summary>
internal sealed class ImportDesk
{
    private readonly HomeJournal journal;
    private readonly Home home;
    private readonly CommandHost host;
    private readonly DateTimeOffset now;

    private ImportDesk(HomeJournal journal, Home home, CommandHost host)
    {
        (this.journal, this.home, this.host) = (journal, home, host);
        now = host.Surroundings.Time.GetUtcNow();
    }

    private string Person => journal.Holder?.Person ?? home.Settings.Aide;

    /// <summary>Does the work on the home's journal; an aide does it not.</summary>
    public static int With(IServiceProvider services, CommandHost host, Func<ImportDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal => journal.Holder is { Role: Role.Aide }
                ? host.Refuse("an aide imports nothing; a nurse or a supervisor does")
                : work(new ImportDesk(journal, home, host)));
    }

    /// <summary>Past readings, and limits to be proposed, from a bundle of FHIR R4.</summary>
    /// <param name="file">The bundle.</param>
    /// <param name="days">Readings that are older are left out.</param>
    /// <param name="dryRun">Only says what would be taken.</param>
    public int Fhir(string file, int days, bool dryRun)
    {
        (byte[]? content, string? unreadable) = BoundedFile.Read(file, BoundedFile.MostBytesOfBundle);
        if (content is null)
        {
            return host.Refuse(unreadable!);
        }

        IncomingRecord record = new RecordFhir(home.Settings.Exchange?.Residents, id => home.Roster.ById(id) is not null, home.Settings.TimeZone).Read(file, content);
        return record.Errors.Count > 0 ? host.RefuseAll(record.Errors.Select(e => e.ToString())) : Take(file, record, days, dryRun);
    }

    /// <summary>Past readings from a table.</summary>
    /// <param name="file">The table.</param>
    /// <param name="days">Readings that are older are left out.</param>
    /// <param name="dryRun">Only says what would be taken.</param>
    public int Csv(string file, int days, bool dryRun)
    {
        (byte[]? content, string? unreadable) = BoundedFile.Read(file);
        if (content is null)
        {
            return host.Refuse(unreadable!);
        }

        (IReadOnlyList<PastSet> sets, IReadOnlyList<FileError> errors) = ReadingCsv.Read(file, content, home.Settings.WeightUnit, home.Settings.TimeZone);
        ILookup<bool, PastSet> known = sets.ToLookup(s => home.Roster.ById(s.Resident) is not null);
        return errors.Count > 0
            ? host.RefuseAll(errors.Select(e => e.ToString()))
            : Take(
                file,
                new(
                    [.. known[true].SelectMany(s => s.Readings.Select(r => new IncomingReading(s.Resident, r, s.At, ReadBackTexts.Of(r))))], [],
                    [.. known[false].Select(s => s.Resident).Distinct().Select(id => $"resident {id} is nobody on the roster")], []),
                days,
                dryRun);
    }

    private int Take(string file, IncomingRecord record, int days, bool dryRun)
    {
        List<string> leftOut = [.. record.LeftOut];
        IReadOnlyList<JournalEvent> all = journal.All();
        HashSet<(string, VitalSign, long, Quantity)> had =
        [
            .. PastReadings.Standing(all).Select(r => Key(r.Resident, r.Confirmed.Reading, r.Confirmed.By.MeasuredAt)),
            .. all.OfType<ReadingImported>().Select(r => Key(r.Resident, r.Reading, r.MeasuredAt)),
        ];
        List<IncomingReading> readings = [];
        int twice = 0;
        foreach (IncomingReading reading in record.Readings.OrderBy(r => r.At))
        {
            string? why = reading.At > now ? "is of a time that is not yet"
                : now - reading.At > TimeSpan.FromDays(days) ? $"is older than {days} days"
                : CanNotBe(reading);
            if (why is not null)
            {
                leftOut.Add($"{reading.Where}: {why}");
            }
            else if (had.Add(Key(reading.Resident, reading.Reading, reading.At)))
            {
                readings.Add(reading);
            }
            else
            {
                twice++;
            }
        }

        OrderProposed[] before = [.. all.OfType<OrderProposed>()];
        IncomingLimit[] limits = [.. record.Limits.Where(l => !before.Any(b => b.Resident == l.Resident && b.Limit == l.Limit))];
        foreach (string line in leftOut)
        {
            host.Surroundings.Out.WriteLine($"left out: {line}");
        }

        host.Surroundings.Out.WriteLine($"{readings.Count} readings of {readings.Select(r => r.Resident).Distinct().Count()} residents, {limits.Length} proposed limits; {twice + record.Limits.Count - limits.Length} are here already, {leftOut.Count} left out");
        if (dryRun || readings.Count + limits.Length == 0)
        {
            return ExitCodes.Done;
        }

        string name = Path.GetFileName(file);
        journal.Events.AppendAll(
        [
            .. readings.Select(r => new ReadingImported(journal.Desk.NextId(), Person, now, r.Resident, r.Reading, r.At, $"{name}, {r.Where}")),
            .. limits.Select(l => new OrderProposed(journal.Desk.NextId(), Person, now, l.Resident, l.Limit, $"{name}, {l.Where}")),
        ]);
        host.Surroundings.Out.WriteLine(limits.Length == 0 ? "imported" : "imported; a nurse looks at the limits with \"handsfree import proposals\"");
        return ExitCodes.Done;
    }

    /// <summary>To the second: other systems keep no more.</summary>
    private static (string Resident, VitalSign Sign, long Second, Quantity Value) Key(string resident, Reading reading, DateTimeOffset at) =>
        (resident, reading.Value.Sign, at.ToUnixTimeSeconds(), reading.Value);

    /// <summary>What the entry limits of the rules say can't be.</summary>
    private string? CanNotBe(IncomingReading reading)
    {
        Decision decision = home.Rules.Decide(reading.Reading, DecisionContexts.New([], home.Roster.ById(reading.Resident)!, reading.At, 0, new HashSet<string>()));
        return decision.Outcome == Outcome.AskAgain ? string.Join("; ", decision.Reasons.Select(r => r.Text)) : null;
    }
}
