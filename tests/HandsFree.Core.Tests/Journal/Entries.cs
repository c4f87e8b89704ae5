using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Rules;

namespace HandsFree.Core.Tests.Journal;

/// <summary>Journal events of one resident, written briefly, one a minute unless time passes between.</summary>
internal sealed class Entries
{
    public const string Resident = "r1";

    private readonly List<JournalEvent> all = [];
    private int number;
    private string aide = "aide-1";

    public IReadOnlyList<JournalEvent> All => all;

    public DateTimeOffset Now { get; private set; } = Notation.Now;

    public Entries After(TimeSpan time)
    {
        Now += time;
        return this;
    }

    public Entries Reading(string text, bool recheck = false, string? amends = null) => ReadingOf(TimeSpan.Zero, text, recheck, amends);

    /// <summary>A reading measured so long after now; before it where negative.</summary>
    public Entries ReadingOf(TimeSpan after, string text, bool recheck = false, string? amends = null)
    {
        Reading reading = Notation.Reading(text);
        var heard = new Heard(text, 0.9, null, null, null, Typed: false, Now);
        Confirmed confirmed = ReadBack.Of(new Understood(heard, reading), text, Now).ByYes(heard, new Attribution("aide-1", Now + after, Now, Late: after < TimeSpan.Zero));
        return Add(id => new ReadingRecorded(id, "aide-1", Now, Resident, confirmed, new Decision(Outcome.Accept, null, [], false, "0123"), recheck, amends));
    }

    public Entries Recheck(VitalSign sign, string reading, int minutes = 0) =>
        Add(id => new RecheckAsked(id, "aide-1", Now, Resident, sign, reading, "rule", "Measure again.", Now + TimeSpan.FromMinutes(minutes)));

    public Entries Report(VitalSign sign, params string[] readings) =>
        Add(id => new ReportOpened(id, "aide-1", Now, Resident, ReportUrgency.ThisShift, sign, readings, "", []));

    public Entries Acknowledged(string report) => Add(id => new ReportAcknowledged(id, "nurse-1", Now, report));

    public Entries Told(string report, Core.Reports.Told whom = Core.Reports.Told.Nurse) =>
        Add(id => new ReportTold(id, "aide-1", Now, report, whom, null, ToldHow.InPerson, Now));

    public Entries Closed(string report) => Add(id => new ReportClosed(id, "nurse-1", Now, report, "better"));

    public Entries Plan(string report, LimitedValue value, decimal? least, decimal? greatest, int hours) =>
        Add(id => new PlanMade(id, "nurse-1", Now, Resident, report, value, least, greatest, Now.AddHours(hours), "rest in bed"));

    /// <summary>Who does what follows.</summary>
    public Entries By(string person)
    {
        aide = person;
        return this;
    }

    public Entries Identified(string resident = Resident) =>
        Add(id => new ResidentIdentified(id, aide, Now, resident, SecondIdentifier.BandNumber));

    public Entries Round() => Add(id => new RoundStarted(id, aide, Now, "0123"));

    public Entries Locked() => Add(id => new SessionLocked(id, aide, Now));

    public Entries InError(string entry) => Add(id => new EnteredInError(id, "aide-1", Now, Resident, entry, "undo"));

    private Entries Add(Func<string, JournalEvent> make)
    {
        Now += TimeSpan.FromMinutes(1);
        all.Add(make((++number).ToString(CultureInfo.InvariantCulture)));
        return this;
    }
}
