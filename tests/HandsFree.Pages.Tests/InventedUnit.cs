using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Trends;
using HandsFree.Simulation;

namespace HandsFree.Pages.Tests;

/// <summary>A small unit of the simulated home, and one of each thing that a page must show, written by hand behind its record.</summary>
internal static class InventedUnit
{
    public static readonly DateTimeOffset Now = new(2026, 11, 26, 14, 40, 0, TimeSpan.FromHours(-6));
    public static readonly DateTimeOffset ShiftBegan = new(2026, 11, 26, 7, 0, 0, TimeSpan.FromHours(-6));
    public static readonly Rulebook Rules = Rulebook.Load().Rulebook!;
    private const string Aide = "aide-birch-day";
    private const string Nurse = "nurse-invented";

    private static readonly Lazy<(Roster Roster, IReadOnlyList<JournalEvent> Journal)> Made = new(Make);
    private static int written;

    public static Roster Roster => Made.Value.Roster;

    public static IReadOnlyList<JournalEvent> Journal => Made.Value.Journal;

    public static SheetFacts Facts(DateTimeOffset? since = null) => new(
        SimulatedHome.Name, Now, since ?? ShiftBegan, "desk-birch", "nurse-invented", 12345, new RosterUnits(TemperatureUnit.Fahrenheit, WeightUnit.Pounds))
    {
        Round = new(new DialogueSettings().Due),
        Here = moment => moment.ToOffset(Now.Offset),
    };

    public static HandoverSheet Handover() => HandoverSheet.Of(Facts(), Journal, Roster, Rules);

    public static TrendSheet Trend(string id = "1001") => TrendSheet.Of(Facts(Now.AddDays(-31)), Journal, Roster.ById(id)!, Rules);

    /// <summary>A reading of a resident as a round records it.</summary>
    public static ReadingRecorded Reading(string resident, Quantity value, DateTimeOffset at, Circumstances? how = null, bool recheck = false, string? amends = null, bool late = false)
    {
        Reading reading = new(value, how ?? Circumstances.Unsaid);
        Heard heard = new("typed", 1, null, null, null, true, at);
        Confirmed confirmed = ReadBack.Of(new Understood(heard, reading), ReadBackTexts.Of(reading), at).ByYes(heard, new Attribution(Aide, at, at, late));
        Resident who = new() { Id = resident, Name = resident, Room = 1, Born = DateOnly.MinValue };
        Decision decision = Rules.Decide(reading, new DecisionContext(who, [], recheck ? 2 : 0, at, new HashSet<string>()));
        return new(Id(), Aide, at, resident, confirmed, decision, recheck, amends);
    }

    private static string Id() => FormattableString.Invariant($"hand-{Interlocked.Increment(ref written)}");

    private static (Roster, IReadOnlyList<JournalEvent>) Make()
    {
        SimulatedHome home = new(new SimulationPlan(Now) { Residents = 10, Days = 31, Seed = 5 }, Rules);
        Roster roster = new([.. home.Roster.Residents.Select((r, i) => i == 7 ? r with { Away = new Absence("hospital", new(2026, 11, 25), null) } : r)]);
        // The last shift is written by hand.
        List<JournalEvent> journal = [.. home.Events().Where(e => e.At < ShiftBegan && !(e is ReadingRecorded { Resident: "1007" } && e.At > Now.AddDays(-2)))];
        static DateTimeOffset At(int hour, int minute) => new(2026, 11, 26, hour, minute, 0, Now.Offset);
        static BloodPressure Pressure(int upper, int lower) => BloodPressure.FromMillimetresOfMercury(upper, lower);

        // 1000: a report now, told, overdue; the first reading and its recheck.
        ReadingRecorded first = Reading("1000", HeartRate.FromPerMinute(136), At(8, 2), new() { Counted = 68, CountedSeconds = 30 });
        ReadingRecorded second = Reading("1000", HeartRate.FromPerMinute(134), At(8, 5), new() { Counted = 134, CountedSeconds = 60, Uneven = true }, recheck: true);
        ReportOpened now = new(Id(), Aide, At(8, 6), "1000", ReportUrgency.Now, VitalSign.Pulse, [first.Id, second.Id], "Very fast pulse: pulse 134 /min, above 130 /min", ["pulse.now.high"]);
        journal.AddRange([first, second, now, new ReportTold(Id(), Aide, At(8, 9), now.Id, Told.Nurse, Nurse, ToldHow.InPerson, At(8, 8))]);

        // 1001: a fever, amended; a late entry; said as a guess first; a recheck within limits.
        ReadingRecorded slip = Reading("1001", BodyTemperature.FromFahrenheit(109.6m), At(8, 15), new() { Site = TemperatureSite.Mouth });
        ReadingRecorded right = Reading("1001", BodyTemperature.FromFahrenheit(100.6m), At(8, 15), new() { Site = TemperatureSite.Ear }, amends: slip.Id);
        ReportOpened fever = new(Id(), Aide, At(8, 21), "1001", ReportUrgency.ThisShift, VitalSign.Temperature, [right.Id], "Fever, single reading: temperature 100.6 °F, above 100 °F", ["temperature.fever.single"]);
        journal.AddRange(
        [
            slip, right,
            new ReadingAmended(Id(), Aide, At(8, 20), "1001", AmendmentKind.CorrectedValue, slip.Id, right.Id, null, "digits exchanged"),
            fever,
            Reading("1001", HeartRate.FromPerMinute(88), At(8, 17), new() { Counted = 44, CountedSeconds = 30, SaidAsGuessFirst = true }),
            Reading("1001", Pressure(188, 92), At(8, 18), new() { Arm = Arm.Left, Position = BodyPosition.Sitting, Machine = true }),
            Reading("1001", Pressure(152, 84), At(8, 24), new() { Arm = Arm.Left, Position = BodyPosition.Sitting, Machine = true }, recheck: true),
            Reading("1001", OxygenSaturation.FromPercent(93), At(8, 25), new() { Oxygen = new OxygenSupply(2), Machine = true }, late: true),
        ]);

        // 1002: a recheck waits. 1003: refused. 1004: left open. 1005: acknowledged, with a plan. 1006 and 1007: nobody was there, one is away.
        ReadingRecorded doubted = Reading("1002", Pressure(192, 88), At(8, 31), new() { Arm = Arm.Right, Machine = true });
        journal.AddRange([doubted, new RecheckAsked(Id(), Aide, At(8, 31), "1002", VitalSign.BloodPressure, doubted.Id, "pressure.high", "Let the resident rest five minutes, then measure again.", At(8, 36))]);
        Heard refused = new("refused", 1, null, null, null, true, At(8, 40));
        journal.Add(new NotTakenRecorded(Id(), Aide, At(8, 40), "1003", VitalSign.BloodPressure, NotTakenReason.Refused, refused, "Blood pressure, refused."));
        journal.AddRange([Reading("1003", HeartRate.FromPerMinute(72), At(8, 41)), Reading("1003", OxygenSaturation.FromPercent(96), At(8, 42), new() { Oxygen = OxygenSupply.RoomAir })]);
        journal.Add(new LeftOpen(Id(), Aide, At(8, 47), "1004", VitalSign.Respirations));
        ReadingRecorded low = Reading("1005", OxygenSaturation.FromPercent(88), At(8, 52), new() { Oxygen = OxygenSupply.RoomAir }, recheck: true);
        ReportOpened known = new(Id(), Aide, At(8, 53), "1005", ReportUrgency.Now, VitalSign.OxygenSaturation, [low.Id], "Low saturation: oxygen saturation 88 %, below 90 %", ["oxygen.now.low"]);
        journal.AddRange(
        [
            low, known,
            new ReportAcknowledged(Id(), Nurse, At(9, 5), known.Id) { Advised = "oxygen at 2 litres, measure each hour" },
            new PlanMade(Id(), Nurse, At(9, 6), "1005", known.Id, LimitedValue.OxygenSaturation, 86, null, At(19, 0), "Tell me at once below 86."),
        ]);
        foreach ((string id, int i) in new[] { "1008", "1009" }.Select((id, i) => (id, i)))
        {
            journal.AddRange([Reading(id, BodyTemperature.FromFahrenheit(97.8m), At(9, 10 + i), new() { Site = TemperatureSite.Ear }), Reading(id, Pressure(128, 70), At(9, 12 + i), new() { Machine = true })]);
        }

        // 1008 alone has all that is due.
        journal.AddRange(
        [
            Reading("1008", HeartRate.FromPerMinute(70), At(9, 20), new() { Machine = true }),
            Reading("1008", RespiratoryRate.FromPerMinute(18), At(9, 21), new() { CountedSeconds = 60 }),
            Reading("1008", OxygenSaturation.FromPercent(97), At(9, 22), new() { Oxygen = OxygenSupply.RoomAir }),
        ]);
        return (roster, journal);
    }
}
