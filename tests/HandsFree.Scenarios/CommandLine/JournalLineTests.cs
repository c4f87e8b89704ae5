using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.People;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class JournalLineTests
{
    private static readonly DateTimeOffset At = CommandRun.Now;

    private static readonly Heard Words = new("words", 0.9, 3, null, null, Typed: true, At);

    private static readonly JournalEvent[] OneOfEach =
    [
        new RoundStarted("1", "aide-7", At, "hash"),
        new ResidentIdentified("2", "aide-7", At, "r1", SecondIdentifier.BandNumber),
        new IdentificationFailed("3", "aide-7", At, "r3", "the date of birth did not match"),
        InventedHome.Pulse("4", "r1", 72, At),
        new NotTakenRecorded("5", "aide-7", At, "r2", VitalSign.BloodPressure, NotTakenReason.Asleep, Words, "not taken"),
        new AttemptDiscarded("6", "aide-7", At, "r2", Words, null, null, "a guess"),
        new LeftOpen("7", "aide-7", At, "gone", VitalSign.OxygenSaturation),
        new RecheckAsked("8", "aide-7", At, "r1", VitalSign.Pulse, "4", "pulse.fast", "Count for 60 seconds.", At),
        new ReportOpened("9", "aide-7", At, "r1", ReportUrgency.ThisShift, VitalSign.Pulse, ["4"], "pulse 72", ["pulse.fast"]),
        new ReportAcknowledged("10", "nurse-1", At, "9"),
        new ReportTold("30", "aide-7", At, "9", Told.Nurse, "nurse-1", ToldHow.InPerson, At),
        new PlanWithdrawn("31b", "nurse-1", At, "r1", "9", "31", "pulse has settled"),
        new PlanMade("31", "nurse-1", At, "r1", "9", LimitedValue.Pulse, null, 110, At.AddHours(8), "measure again at six"),
        new ReportClosed("32", "nurse-1", At, "9", "76, as usual"),
        new EnteredInError("11", "aide-7", At, "r1", "4", "wrong resident"),
        new RoundEnded("12", "aide-7", At),
        new ReadingAmended("20", "nurse-1", At, "r1", AmendmentKind.WrongResident, "4", "21", "r2", "it was her neighbour"),
        new ReportNoted("22", "nurse-1", At, "r1", "9", "a reading that this rests on was amended: it was her neighbour"),
        new PersonAdded("13", "nurse-1", At, "aide-7", "Ann Example", Role.Aide),
        new PersonRemoved("14", "nurse-1", At, "aide-7"),
        new PinChanged("15", "nurse-1", At, "aide-7", ByRecoveryKey: false),
        new RecoveryKeyMade("16", "nurse-1", At),
        new RecordViewed("17", "nurse-1", At, "handover"),
        new JournalRestored("18", "nurse-1", At, 240, OtherDevice: true),
        new JournalRestored("34", "nurse-1", At, 240, OtherDevice: false) { Lost = 3 },
        new JournalAccepted("35", "nurse-1", At, 240, "the disk was replaced"),
        new OpeningFailed("36", "nurse-1", At, At.AddMinutes(-5), "aide-7", "PIN"),
        new EmergencyKeyMade("39", "nurse-1", At),
        new EmergencyOpened("40", "emergency-key", At, "night nurse, nobody with a passphrase is here"),
        new DeviceRetired("41", "nurse-1", At, "the laptop is sold"),
        new HomeFileKept("38", "nurse-1", At, "home.json", "{}"),
        new NotBelieved("37", "nurse-1", At, "ReportAcknowledged", "not signed by nurse-1"),
        new RosterKept("23", "nurse-1", At, "fedcba9876543210", "{}", TemperatureUnit.Fahrenheit, WeightUnit.Pounds),
        new SessionLocked("24", "aide-7", At),
        new UnlockFailed("25", "aide-7", At, TimeSpan.FromSeconds(30)),
        new SessionUnlocked("26", "aide-7", At, UnlockedBy.SpokenDigits),
        new SpokenDigitsSet("27", "nurse-1", At, "aide-7", "c2FsdA==", "aGFzaA=="),
        new AudioKept("28", "aide-7", At, "0123456789abcdef0123456789abcdef", "4", At, 1.5, At.AddDays(7)),
        new AudioDeleted("29", "nurse-1", At, "0123456789abcdef0123456789abcdef", "its days are over"),
        new RecordTakenOut("33", "nurse-1", At, "readings as CSV", "readings.csv", "asked for by the home's records office"),
        new RecordDelivered("34", "nurse-1", At, "https://server.example/fhir/", null, 240),
        new RoundResumed("38", "aide-7", At),
        new DialogueTold("s-told-1", "aide-7", At, "s", "20260303-0700", [1, 2, 3]),
        new ReadingImported("35", "nurse-1", At, "r1", new Reading(BodyWeight.FromPounds(160), Circumstances.Unsaid), At.AddDays(-21), "past.json, Observation/w"),
        new OrderProposed("36", "nurse-1", At, "r1", new OrderedLimit(LimitedValue.Pulse, 45, 115, "Dr Example", new(2026, 2, 1)), "past.json, Goal/g"),
        new ProposalSettled("37", "nurse-1", At, "36", Accepted: false, "an old goal"),
        new RulesKept("19", "aide-7", At, "0123456789abcdef", new Dictionary<string, string> { ["pulse.json"] = "{}" }),
    ];

    [Fact]
    public void Every_kind_of_event_has_its_line()
    {
        using TemporaryHome folder = InventedHome.New();
        Home home = Home.Open(folder.Folder, TimeZoneInfo.Utc).Home!;

        Golden.Match(string.Join('\n', OneOfEach.Select((happened, i) => JournalLine.Text(i + 1, happened, home))));
    }

    [Fact]
    public void No_kind_of_event_is_missing_here() =>
        OneOfEach.Select(happened => happened.GetType()).Distinct().ShouldBe(
            typeof(JournalEvent).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(JournalEvent))), ignoreOrder: true);
}
