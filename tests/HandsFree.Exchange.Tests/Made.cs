using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Exchange.Tests;

/// <summary>Invented events of an invented home.</summary>
internal static class Made
{
    public static readonly TimeZoneInfo Chicago = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
    public static readonly DateTimeOffset At = new(2026, 3, 3, 8, 5, 30, TimeSpan.FromHours(-6));
    public static readonly Rulebook Rules = Rulebook.Load().Rulebook!;

    public static readonly Resident Ada = new() { Id = "r1", Name = "Ada Quill", OfficialName = "Adelaide Quill", Room = 12, Bed = "a", Born = new(1931, 3, 9) };
    public static readonly Resident Bo = new() { Id = "r2", Name = "Bo Larkin", Room = 12, Bed = "b", Born = new(1940, 11, 30) };
    public static readonly Roster Roster = new([Ada, Bo]);

    public static Reading Reading(Quantity value, Circumstances? how = null) => new(value, how ?? Circumstances.Unsaid);

    public static Reading Pulse(int perMinute, Circumstances? how = null) => Reading(HeartRate.FromPerMinute(perMinute), how);

    public static Reading Pressure(int systolic, int diastolic, Circumstances? how = null) =>
        Reading(BloodPressure.FromMillimetresOfMercury(systolic, diastolic), how);

    public static ReadingRecorded Recorded(string id, Reading reading, DateTimeOffset? at = null, string resident = "r1", string? amends = null, bool late = false)
    {
        DateTimeOffset measured = at ?? At;
        Decision decision = Rules.Decide(reading, new DecisionContext(Ada, [], 2, measured, new HashSet<string>()));
        ReadBack back = ReadBack.Of(new Understood(Heard("said", measured), reading), ReadBackTexts.Of(reading), measured);
        DateTimeOffset entered = late ? measured.AddHours(4.5) : measured.AddSeconds(4);
        Confirmed confirmed = back.ByYes(Heard("yes", measured), new Attribution("aide-7", measured, entered, late));
        return new ReadingRecorded(id, "aide-7", entered, resident, confirmed, decision, IsRecheck: false, amends);
    }

    public static NotTakenRecorded NotTaken(string id, VitalSign? sign, NotTakenReason reason, string resident = "r1") =>
        new(id, "aide-7", At, resident, sign, reason, Heard("not taken", At), "not taken");

    public static ReportOpened Report(string id, ReportUrgency urgency, params string[] readings) =>
        new(id, "aide-7", At.AddMinutes(2), "r1", urgency, VitalSign.Pulse, readings, "pulse 136 per minute, report above 130", ["pulse.now.high"]);

    public static Heard Heard(string words, DateTimeOffset at) => new(words, 0.98, 4.5, null, -20, Typed: false, at);

    public static (long Number, JournalEvent Event)[] Numbered(params IEnumerable<JournalEvent> events) => [.. events.Select((e, i) => (i + 1L, e))];
}
