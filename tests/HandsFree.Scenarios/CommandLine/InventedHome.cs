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
        DateTimeOffset at = CommandRun.Now.AddHours(-1).ToOffset(TimeSpan.FromHours(-6));
        return New().WithJournal(
            new RoundStarted("s-1", "aide-7", at, Rules.Hash),
            new ResidentIdentified("s-2", "aide-7", at, "r1", SecondIdentifier.BirthDayAndMonth),
            Pulse("s-3", "r1", 136, at.AddMinutes(2)),
            new ReportOpened("s-4", "aide-7", at.AddMinutes(3), "r1", ReportUrgency.Now, VitalSign.Pulse, ["s-3"], "pulse 136", ["pulse.now.high"]),
            new NotTakenRecorded("s-5", "aide-7", at.AddMinutes(9), "r2", null, NotTakenReason.Refused, Heard("refused", at), "not taken, refused"),
            new RoundEnded("s-6", "aide-7", at.AddMinutes(20)));
    }

    /// <summary>As after the round; room 14 has a temperature and a recheck that waits, room 3 a pulse and an oxygen left open.</summary>
    public static TemporaryHome AtTheChangeOfShift()
    {
        DateTimeOffset at = CommandRun.Now.AddMinutes(-40).ToOffset(TimeSpan.FromHours(-6));
        return AfterTheRound().With("roster.json", Roster.Replace(
            "{ \"id\": \"r3\"",
            "{ \"id\": \"r4\", \"name\": \"Di Noble\", \"room\": 14, \"born\": \"1935-07-04\", \"usualValues\": [{ \"value\": \"temperature\", \"median\": 97.6 }] },\n{ \"id\": \"r3\"",
            StringComparison.Ordinal)).WithJournal(
            Temperature("t-1", "r4", 100.2m, at),
            new RecheckAsked("t-2", "aide-7", at.AddSeconds(20), "r4", VitalSign.Temperature, "t-1", "temperature.high", "Measure again by mouth.", at.AddMinutes(15)),
            Pulse("t-3", "r3", 76, at.AddMinutes(10)),
            new LeftOpen("t-4", "aide-7", at.AddMinutes(12), "r3", VitalSign.OxygenSaturation));
    }

    private static ReadingRecorded Temperature(string id, string resident, decimal fahrenheit, DateTimeOffset at) =>
        Taken(id, resident, new Reading(BodyTemperature.FromFahrenheit(fahrenheit), Circumstances.Unsaid), at);

    /// <summary>A pulse that was heard, read back, agreed and decided.</summary>
    public static ReadingRecorded Pulse(string id, string resident, int perMinute, DateTimeOffset at) =>
        Taken(id, resident, new Reading(HeartRate.FromPerMinute(perMinute), Circumstances.Unsaid), at);

    private static ReadingRecorded Taken(string id, string resident, Reading reading, DateTimeOffset at)
    {
        ReadBack readBack = ReadBack.Of(new Understood(Heard("said", at), reading), ReadBackTexts.Of(reading), at);
        Resident anyone = new() { Id = resident, Name = "Any Body", Room = 1, Born = new DateOnly(1930, 1, 1) };
        Decision decision = Rules.Decide(reading, new DecisionContext(anyone, [], 2, at, new HashSet<string>()));
        Confirmed confirmed = readBack.ByYes(Heard("yes", at), new Attribution("aide-7", at, at));
        return new ReadingRecorded(id, "aide-7", at, resident, confirmed, decision, IsRecheck: false, Amends: null);
    }

    private static Heard Heard(string words, DateTimeOffset at) => new(words, 0.98, 4.5, null, -20, Typed: false, at);
}
