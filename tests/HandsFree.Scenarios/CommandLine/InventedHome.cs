using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>An invented home: three residents, a morning's round.</summary>
internal static class InventedHome
{
    public const string Settings = """
        {
          "timeZone": "America/Chicago",
          "aide": "aide-7"
        }
        """;

    public const string Roster = """
        {
          "residents": [
            { "id": "r1", "name": "Ada Quill", "room": 12, "bed": "a", "born": "1931-03-09", "bandNumber": "4711",
              "usualValues": [{ "value": "pulse", "median": 72 }] },
            { "id": "r2", "name": "Bo Larkin", "room": 12, "bed": "b", "born": "1940-11-30" },
            { "id": "r3", "name": "Cy Marsh", "room": 3, "born": "1928-02-29" }
          ]
        }
        """;

    private static readonly Rulebook Rules = Rulebook.Load().Rulebook!;

    public static TemporaryHome New() => new TemporaryHome().With("home.json", Settings).With("roster.json", Roster);

    /// <summary>Room 12 bed A has an open report, bed B refused, room 3 was not visited.</summary>
    public static TemporaryHome AfterTheRound()
    {
        DateTimeOffset at = CommandRun.Now.AddHours(-1);
        return New().WithJournal(
            new RoundStarted("s-1", "aide-7", at, Rules.Hash),
            new ResidentIdentified("s-2", "aide-7", at, "r1", SecondIdentifier.BirthDayAndMonth),
            Pulse("s-3", "r1", 136, at.AddMinutes(2)),
            new ReportOpened("s-4", "aide-7", at.AddMinutes(3), "r1", ReportUrgency.Now, VitalSign.Pulse, ["s-3"], "pulse 136", ["pulse.now.high"]),
            new NotTakenRecorded("s-5", "aide-7", at.AddMinutes(9), "r2", null, NotTakenReason.Refused, Heard("refused", at), "not taken, refused"),
            new RoundEnded("s-6", "aide-7", at.AddMinutes(20)));
    }

    /// <summary>A pulse that was heard, read back, agreed and decided.</summary>
    public static ReadingRecorded Pulse(string id, string resident, int perMinute, DateTimeOffset at)
    {
        Reading reading = new(HeartRate.FromPerMinute(perMinute), Circumstances.Unsaid);
        ReadBack readBack = ReadBack.Of(new Understood(Heard("pulse", at), reading), ReadBackTexts.Of(reading), at);
        Resident anyone = new() { Id = resident, Name = "Any Body", Room = 1, Born = new DateOnly(1930, 1, 1) };
        Decision decision = Rules.Decide(reading, new DecisionContext(anyone, [], 2, at, new HashSet<string>()));
        Confirmed confirmed = readBack.ByYes(Heard("yes", at), new Attribution("aide-7", at, at));
        return new ReadingRecorded(id, "aide-7", at, resident, confirmed, decision, IsRecheck: false, Amends: null);
    }

    private static Heard Heard(string words, DateTimeOffset at) => new(words, 0.98, 4.5, null, -20, Typed: false, at);
}
