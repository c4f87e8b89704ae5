using HandsFree.App.Homes;
using HandsFree.Core.Reports;
using HandsFree.Core.Files;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Homes;

public sealed class SettingsTests
{
    private static readonly TimeZoneInfo Chicago = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");

    [Fact]
    public void A_home_without_files_has_the_defaults_no_residents_and_the_program_s_rules()
    {
        using TemporaryHome folder = new();

        Home.Open(folder.Folder, Chicago).TryGet(out Home? home).ShouldBeTrue();

        home.Settings.TimeZone.ShouldBe(Chicago);
        home.Settings.Shifts.Select(shift => shift.Begins.Hour).ShouldBe([7, 15, 23]);
        home.Roster.Residents.ShouldBeEmpty();
        home.Rules.Describe().ShouldNotBeEmpty();
    }

    [Fact]
    public void Every_field_of_home_json_is_taken()
    {
        using TemporaryHome folder = new TemporaryHome().With("home.json", """
            // comments are allowed
            {
              "$schema": "home.schema.json",
              "name": "Invented House",
              "timeZone": "Europe/Helsinki",
              "units": { "temperature": "celsius", "weight": "kilograms" },
              "shifts": [ { "name": "late", "begins": "14:30" }, { "name": "early", "begins": "06:00" } ],
              "overdueMinutes": { "reportNow": 5, "reportThisShift": 60, "recheck": 10 },
              "wording": { "refused": "declined" },
              "engine": "words",
              "aide": "aide-9",
              "pulseCountSeconds": 60,
              "longestPauseMinutes": 4,
              "answerAwaitedSeconds": 6,
              "leadAfterSeconds": 30,
              "due": [ "weight", "pain" ]
            }
            """);

        HomeSettings settings = Opened(folder).Settings;

        settings.Name.ShouldBe("Invented House");
        settings.TimeZone.Id.ShouldBe("Europe/Helsinki");
        settings.TemperatureUnit.ShouldBe(TemperatureUnit.Celsius);
        settings.WeightUnit.ShouldBe(WeightUnit.Kilograms);
        settings.Shifts.ShouldBe([new Shift("early", new TimeOnly(6, 0)), new Shift("late", new TimeOnly(14, 30))]);
        settings.Overdue.ShouldBe(new Overdue(TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(60), TimeSpan.FromMinutes(10)));
        settings.Wording.Of("Refused, then refused again; a refusal.").ShouldBe("Declined, then declined again; a refusal.");
        settings.Engine.ShouldBe("words");
        settings.Aide.ShouldBe("aide-9");
        settings.LongestPause.ShouldBe(TimeSpan.FromMinutes(4));
        settings.AnswerAwaited.ShouldBe(TimeSpan.FromSeconds(6));
        settings.LeadAfter.ShouldBe(TimeSpan.FromSeconds(30));
        settings.Due.ShouldBe([VitalSign.Weight, VitalSign.Pain]);
        settings.ForDialogue().ShouldSatisfyAllConditions(
            dialogue => dialogue.WeightUnit.ShouldBe(WeightUnit.Kilograms),
            dialogue => dialogue.PulseCountSeconds.ShouldBe(60),
            dialogue => dialogue.LongestPause.ShouldBe(TimeSpan.FromMinutes(4)),
            dialogue => dialogue.Due.ShouldBe([VitalSign.Weight, VitalSign.Pain]));
    }

    [Fact] // Source: safety.md 2.
    public void Breaths_are_counted_for_thirty_seconds_only_with_an_approval_and_then_the_rules_allow_it_too()
    {
        const string Rule = "respirations.method.30-seconds";
        using TemporaryHome folder = new TemporaryHome()
            .With("home.json", """{ "breathsInThirtySeconds": { "approvedBy": "Dr Example", "approvedOn": "2026-03-01" } }""")
            .With("rules.json", """{ "override": [ { "id": "pain.moderate", "threshold": 5, "unit": "{score}" } ] }""");
        using TemporaryHome without = new();
        using TemporaryHome broken = new TemporaryHome()
            .With("home.json", "{ \"breathsInThirtySeconds\": { \"approvedBy\": \"Dr Example\",\n \"approvedOn\": \"2026-02-30\" } }");
        using TemporaryHome bare = new TemporaryHome().With("home.json", """{ "breathsInThirtySeconds": true }""");

        Home home = Opened(folder);

        home.Settings.ForDialogue().BreathsInThirtySeconds.ShouldBeTrue();
        RuleListing rule = home.Rules.Describe().Single(r => r.Id == Rule);
        rule.InForce.ShouldBeFalse();
        rule.Changed.ShouldNotBeNull().ShouldContain("approved by Dr Example on 2026-03-01");
        home.Rules.Describe().Single(r => r.Id == "pain.moderate").Changed.ShouldNotBeNull();
        home.Rules.Describe().Single(r => r.Id == "respirations.method.15-seconds").InForce.ShouldBeTrue();
        Opened(without).Settings.ForDialogue().BreathsInThirtySeconds.ShouldBeFalse();
        Opened(without).Rules.Describe().Single(r => r.Id == Rule).InForce.ShouldBeTrue();
        Home.Open(broken.Folder, Chicago).Errors.ShouldHaveSingleItem().ToString().ShouldEndWith("home.json(2): \"approvedOn\" is \"2026-02-30\", and there is no such day");
        Home.Open(bare.Folder, Chicago).Errors.ShouldHaveSingleItem().Reason.ShouldContain("breaths may be counted for 30 seconds");
    }

    [Theory]
    [InlineData("2026-03-03T12:00Z", "2026-03-02T23:00-06:00")] // 6:00: still the night shift
    [InlineData("2026-03-03T13:00Z", "2026-03-03T07:00-06:00")] // 7:00 to the minute
    [InlineData("2026-03-03T20:59Z", "2026-03-03T07:00-06:00")]
    [InlineData("2026-03-03T21:00Z", "2026-03-03T15:00-06:00")]
    [InlineData("2026-03-08T12:30Z", "2026-03-08T07:00-05:00")] // the clocks went forward at 2:00
    public void A_shift_begins_in_the_home_s_time_zone(string moment, string began)
    {
        HomeSettings settings = new() { TimeZone = Chicago };

        settings.ShiftBegan(Parsed(moment)).ShouldBe(Parsed(began));
    }

    [Fact]
    public void All_errors_of_all_files_are_listed_at_once_with_file_and_line()
    {
        using TemporaryHome folder = new TemporaryHome()
            .With("home.json", """
                {
                  "timeZone": "Atlantis/Capital",
                  "shifts": [ { "name": "day", "begins": "07:00" },
                              { "name": "other", "begins": "07:00" } ],
                  "due": ["pulse",
                          "pulse"]
                }
                """)
            .With("roster.json", """
                { "residents": [
                  { "id": "r1", "name": "Ada Quill", "room": 12, "born": "1931-02-30" },
                  { "id": "r1", "name": "Bo Larkin", "room": 12, "bed": "b", "born": "1940-11-30",
                    "orderedLimits": [ { "value": "pulse", "orderedBy": "Dr X", "orderedOn": "2026-01-01" },
                      { "value": "pulse", "least": 90, "greatest": 50, "orderedBy": "Dr X", "orderedOn": "2026-01-01" } ],
                    "usualValues": [
                      { "value": "temperature", "median": 36.6 },
                      { "value": "pulse", "median": 70.5 },
                      { "value": "pulse", "median": 70, "site": "ear" } ] }
                ] }
                """)
            .With("rules.json", "{ \"rules\": 3 }");

        IReadOnlyList<FileError> errors = Home.Open(folder.Folder, Chicago).Errors;

        string[] said = [.. errors.Select(error => error.ToString().Replace(folder.Path + Path.DirectorySeparatorChar, "", StringComparison.Ordinal))];
        said.Select(line => line.Split(':')[0]).ShouldBe(
        [
            "home.json(2)", "home.json(4)", "home.json(6)",
            "roster.json(2)", "roster.json(2)", "roster.json(3)", "roster.json(4)", "roster.json(5)", "roster.json(7)", "roster.json(8)", "roster.json(9)",
            "rules.json(1)",
        ]);
        said[0].ShouldContain("IANA name such as");
        said[3].ShouldContain("no such day");
        said[4].ShouldContain("room 12 has 2 residents");
        said[5].ShouldContain("\"r1\" is the id of two residents, here and at line 2");
        said[8].ShouldContain("no temperature in degrees Fahrenheit");
        said[9].ShouldContain("a whole number");
    }

    [Fact]
    public void Every_command_that_needs_the_home_refuses_a_broken_one_with_all_its_errors()
    {
        using TemporaryHome folder = InventedHome.New().With("home.json", "{\n\"aide\": 7,\n\"colour\": \"red\"\n}");

        foreach (string[] command in (string[][])[["handover", "--ask", "handover"], ["rules", "list"], ["journal", "list"]])
        {
            CommandRun run = CommandRun.Of(folder, command);

            run.Code.ShouldBe(2);
            run.ErrorLines.Length.ShouldBe(2);
            run.ErrorLines[0].ShouldContain("home.json(2): \"aide\" is 7, must be a text");
            run.ErrorLines[1].ShouldContain("home.json(3): \"colour\" is not known here; known are: name, timeZone,");
        }
    }

    private static Home Opened(TemporaryHome folder)
    {
        HomeOpening opening = Home.Open(folder.Folder, Chicago);
        opening.Errors.ShouldBeEmpty();
        return opening.Home!;
    }

    private static DateTimeOffset Parsed(string text) => DateTimeOffset.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
