using HandsFree.App.Commands;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.RuleDesk;
using HandsFree.App.ShiftChange;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Journal.Amending;
using HandsFree.Core.Observations;
using HandsFree.Core.People;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Amend;

/// <summary>Amends the record of a home: finds the reading, says what will be done, writes it after a yes.</summary>
internal sealed class AmendDesk
{
    private readonly HomeJournal journal;
    private readonly Home home;
    private readonly CommandHost host;
    private readonly GrammarShelf shelf;
    private readonly (string Because, bool Yes) options;
    private readonly DateTimeOffset now;

    private AmendDesk(HomeJournal journal, Home home, CommandHost host, GrammarShelf shelf, (string Because, bool Yes) options)
    {
        (this.journal, this.home, this.host, this.shelf, this.options) = (journal, home, host, shelf, options);
        now = home.Settings.Here(host.Surroundings.Time.GetUtcNow());
    }

    private string Person => journal.Holder?.Person ?? home.Settings.Aide;

    /// <summary>Does the work on the home's journal.</summary>
    public static int With(IServiceProvider services, CommandHost host, (string Because, bool Yes) options, Func<AmendDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return options.Because.Length == 0
            ? host.Refuse("--because is empty; write why, it stands in the record")
            : !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal =>
                work(new AmendDesk(journal, home, host, services.GetRequiredService<GrammarShelf>(), options)));
    }

    /// <summary>The reading should never have been.</summary>
    public int EnteredInError(long number) => Found(number) is var (reading, wrong) && reading is null
        ? host.Refuse(wrong!)
        : Write($"Entered in error: {Words(reading!)}.", Amendments.EnteredInError(Context(reading), reading!));

    /// <summary>Another value takes its place.</summary>
    public int Correct(long number, string text)
    {
        (ReadingRecorded? reading, string? wrong) = Found(number);
        if (reading is null)
        {
            return host.Refuse(wrong!);
        }

        (ReadBack? value, wrong) = Typed(text, reading.Confirmed.Reading.How);
        return value is null
            ? host.Refuse(wrong!)
            : value.Reading.Value.Sign != reading.Confirmed.Reading.Value.Sign
            ? host.Refuse($"event {number} is {ReadBackTexts.Of(reading.Confirmed.Reading)}; correct it with a value of the same kind")
            : Write($"Was: {Words(reading)}. Is: {value.Text}.", Amendments.Corrected(Context(reading), reading, value));
    }

    /// <summary>A value measured earlier is entered now.</summary>
    public int Late(string resident, string text, string measured, string? by)
    {
        if (home.Roster.ById(resident) is null)
        {
            return host.Refuse(NoResident(resident));
        }

        if (ShiftBeginning.Typed(measured, home.Settings, now) is not { } at || at.At > now)
        {
            return host.Refuse($"--measured is \"{measured}\"; write a time that is over, such as 07:30 or 2026-01-31T07:30");
        }

        (ReadBack? value, string? wrong) = Typed(text, null);
        return value is null
            ? host.Refuse(wrong!)
            : Write(
                $"Late entry for resident {resident}: {value.Text}, measured {at.At:yyyy-MM-dd HH:mm}.",
                Amendments.Late(Context(null), resident, value, at.At, by ?? Person));
    }

    /// <summary>The reading is another resident's.</summary>
    public int Move(long number, string resident)
    {
        (ReadingRecorded? reading, string? wrong) = Found(number);
        return reading is null ? host.Refuse(wrong!)
            : home.Roster.ById(resident) is null ? host.Refuse(NoResident(resident))
            : reading.Resident == resident ? host.Refuse($"event {number} is resident {resident}'s already")
            : Write($"{Words(reading)}: belongs to resident {resident}.", Amendments.Moved(Context(reading), reading, resident));
    }

    private (ReadingRecorded? Reading, string? Wrong) Found(long number)
    {
        if (number < 1 || journal.From(number).FirstOrDefault() is not (var found, ReadingRecorded reading) || found != number)
        {
            return (null, $"event {number} is no reading; \"handsfree journal list\" shows the numbers");
        }

        JournalEvent? later = journal.From(number).Select(e => e.Event).FirstOrDefault(e =>
            (e is EnteredInError error && error.Event == reading.Id) || (e is ReadingRecorded next && next.Amends == reading.Id));
        return later is not null ? (null, $"event {number} is amended already; amend the value that stands")
            : journal.Holder is { Role: Role.Aide } aide && reading.Person != aide.Person ? (null, $"event {number} is {reading.Person}'s; a nurse amends it")
            : home.Roster.ById(reading.Resident) is null ? (null, NoResident(reading.Resident))
            : (reading, null);
    }

    private (ReadBack? Value, string? Wrong) Typed(string text, Circumstances? how)
    {
        (TypedSet? typedSet, string? wrong) = TypedSet.Read(text, home, shelf);
        if (typedSet is not { Readings: [var reading], Symptoms.Count: 0 })
        {
            return (null, wrong ?? $"\"{text}\": more than one reading; write one");
        }

        // What was said about the way it was taken stays true when only the number was wrong; a count of another number doesn't.
        Reading whole = how is not null && reading.How == Circumstances.Unsaid ? reading with { How = how with { Counted = null, CountedSeconds = null } } : reading;
        Heard typed = new(text, 1, null, null, null, Typed: true, now);
        return (ReadBack.Of(new Understood(typed, whole), ReadBackTexts.Of(whole), now), null);
    }

    private AmendmentContext Context(ReadingRecorded? reading)
    {
        IReadOnlyList<JournalEvent> present = journal.Present();
        return new AmendmentContext(
            reading is null || present.Any(e => e.Id == reading.Id) ? present : [reading, .. present],
            home.Roster, home.Rules, Person, now, journal.Desk.NextId, options.Because);
    }

    private int Write(string question, IReadOnlyList<JournalEvent> events)
    {
        host.Surroundings.Out.WriteLine(question);
        foreach (JournalEvent next in events.Where(e => e is ReportOpened or ReportNoted))
        {
            host.Surroundings.Out.WriteLine(JournalLine.What(next));
        }

        if (!options.Yes)
        {
            host.Surroundings.Out.Write("Type yes to write it: ");
            if (host.Surroundings.In.ReadLine()?.Trim() != "yes")
            {
                return host.Refuse("not confirmed; nothing was written");
            }
        }

        long last = journal.Events.AppendAll(events);
        host.Surroundings.Out.WriteLine($"Saved as events {last - events.Count + 1} to {last}.");
        return ExitCodes.Done;
    }

    private string NoResident(string id) => $"{home.Folder.RosterFile} has no resident with the id \"{id}\"; write one that it has";

    private string Words(ReadingRecorded reading) =>
        $"resident {reading.Resident}, {ReadBackTexts.Of(reading.Confirmed.Reading)}, {home.Settings.Here(reading.Confirmed.By.MeasuredAt):yyyy-MM-dd HH:mm}";
}
