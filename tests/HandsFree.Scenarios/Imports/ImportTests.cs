using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Imports;

public sealed class ImportTests
{
    private const string Past = """
        { "resourceType": "Bundle", "type": "collection", "entry": [
          { "resource": { "resourceType": "Patient", "id": "p", "identifier": [ { "system": "https://home.example/residents", "value": "r1" } ] } },
          { "resource": { "resourceType": "Observation", "id": "w", "status": "final", "code": { "coding": [ { "system": "http://loinc.org", "code": "29463-7" } ] },
              "subject": { "reference": "Patient/p" }, "effectiveDateTime": "2026-02-10",
              "valueQuantity": { "value": 160, "unit": "lbs", "system": "http://unitsofmeasure.org", "code": "[lb_av]" } } },
          { "resource": { "resourceType": "Observation", "id": "fast", "status": "final", "code": { "coding": [ { "system": "http://loinc.org", "code": "8867-4" } ] },
              "subject": { "reference": "Patient/p" }, "effectiveDateTime": "2026-02-10T08:00:00Z",
              "valueQuantity": { "value": 390, "unit": "/min", "system": "http://unitsofmeasure.org", "code": "/min" } } },
          { "resource": { "resourceType": "Observation", "id": "later", "status": "final", "code": { "coding": [ { "system": "http://loinc.org", "code": "8867-4" } ] },
              "subject": { "reference": "Patient/p" }, "effectiveDateTime": "2027-02-10",
              "valueQuantity": { "value": 70, "unit": "/min", "system": "http://unitsofmeasure.org", "code": "/min" } } },
          { "resource": { "resourceType": "Goal", "id": "g", "lifecycleStatus": "active", "description": { "text": "slow is hers" }, "subject": { "reference": "Patient/p" },
              "startDate": "2026-02-01", "expressedBy": { "display": "Dr Example" },
              "target": [ { "measure": { "coding": [ { "system": "http://loinc.org", "code": "8867-4" } ] },
                 "detailRange": { "low": { "value": 45, "system": "http://unitsofmeasure.org", "code": "/min" }, "high": { "value": 115, "system": "http://unitsofmeasure.org", "code": "/min" } } } ] } }
        ] }
        """;

    [Fact]
    public void Past_readings_and_limits_are_taken_once_and_what_can_not_be_is_named()
    {
        using TemporaryHome home = Home();

        CommandRun first = CommandRun.Of(home, "import", "fhir", home.At("past.json"));
        first.Code.ShouldBe(ExitCodes.Done, first.Error);
        first.Lines.Count(l => l.StartsWith("left out: Observation/", StringComparison.Ordinal)).ShouldBe(2);
        first.Out.ShouldContain("1 readings of 1 residents, 1 proposed limits; 0 are here already, 2 left out");
        CommandRun.Of(home, "import", "fhir", home.At("past.json")).Out.ShouldContain("0 readings of 0 residents, 0 proposed limits; 2 are here already, 2 left out");

        ReadingImported taken = Events(home).OfType<ReadingImported>().ShouldHaveSingleItem();
        (taken.Resident, taken.Source).ShouldBe(("r1", "past.json, Observation/w"));
        taken.MeasuredAt.ShouldBe(new DateTimeOffset(2026, 2, 10, 12, 0, 0, TimeSpan.FromHours(-6)));
    }

    [Fact]
    public void A_dry_run_takes_nothing()
    {
        using TemporaryHome home = Home();
        CommandRun.Of(home, "import", "fhir", home.At("past.json"), "--dry-run").Out.ShouldContain("1 readings");
        Events(home).OfType<ReadingImported>().ShouldBeEmpty();
        CommandRun.Of(home, "import", "fhir", home.At("past.json"), "--days", "5").Out.ShouldContain("is older than 5 days");
    }

    [Fact]
    public void A_proposed_limit_is_an_order_only_once_it_is_accepted()
    {
        using TemporaryHome home = Home();
        CommandRun.Of(home, "import", "fhir", home.At("past.json"));
        Limits(home).ShouldBeEmpty();
        CommandRun.Of(home, "import", "proposals").Out.ShouldContain("  1  resident r1 (room 12 bed a): ");

        CommandRun.Typing(home, "no\n", "import", "accept", "1").Code.ShouldBe(ExitCodes.BadInput);
        Limits(home).ShouldBeEmpty();
        CommandRun.Typing(home, "yes\n", "import", "accept", "1").Code.ShouldBe(ExitCodes.Done);
        OrderedLimit limit = Limits(home).ShouldHaveSingleItem();
        (limit.Value, limit.Least, limit.Greatest, limit.OrderedBy).ShouldBe((LimitedValue.Pulse, 45, 115, "Dr Example"));
        Events(home).OfType<ProposalSettled>().ShouldHaveSingleItem().Accepted.ShouldBeTrue();
        CommandRun.Of(home, "import", "proposals").Out.Trim().ShouldBe("No proposed limits.");
        CommandRun.Of(home, "import", "accept", "1", "--yes").ErrorLines.ShouldHaveSingleItem().ShouldContain("there is no open proposal 1");
    }

    [Fact]
    public void A_refused_limit_stays_refused()
    {
        using TemporaryHome home = Home();
        CommandRun.Of(home, "import", "fhir", home.At("past.json"));
        CommandRun.Of(home, "import", "refuse", "1", "--because", " ").Code.ShouldBe(ExitCodes.BadInput);
        CommandRun.Of(home, "import", "refuse", "1", "--because", "an old goal").Code.ShouldBe(ExitCodes.Done);
        CommandRun.Of(home, "import", "fhir", home.At("past.json"));
        CommandRun.Of(home, "import", "proposals").Out.Trim().ShouldBe("No proposed limits.");
        Limits(home).ShouldBeEmpty();
    }

    [Fact]
    public void What_was_exported_as_a_table_is_read_into_another_home()
    {
        using TemporaryHome from = InventedHome.AfterTheRound();
        using TemporaryHome to = InventedHome.New().WithJournal(new RoundStarted("x", "aide-7", CommandRun.Now.AddDays(-1), "hash"));
        CommandRun.Of(from, "export", "csv", "--out", to.At("past.csv"), "--because", "a test").Code.ShouldBe(ExitCodes.Done);
        CommandRun.Of(to, "import", "csv", to.At("past.csv")).Out.ShouldContain("1 readings of 1 residents");
        Events(to).OfType<ReadingImported>().ShouldHaveSingleItem().Reading.ShouldBe(Events(from).OfType<ReadingRecorded>().Single().Confirmed.Reading);
        CommandRun.Of(from, "import", "csv", to.At("past.csv")).Out.ShouldContain("0 readings of 0 residents, 0 proposed limits; 1 are here already");
    }

    [Fact]
    public void The_trend_shows_it_and_says_whose_it_is()
    {
        using TemporaryHome home = Home();
        CommandRun.Of(home, "import", "fhir", home.At("past.json"));
        CommandRun run = CommandRun.Of(home, "trend", "r1", "--page", home.At("trend.html"));
        run.Code.ShouldBe(ExitCodes.Done, run.Error);
        File.ReadAllText(home.At("trend.html")).ShouldContain("recorded by another system");
        CommandRun.Of(home, "handover", "--page", home.At("handover.html")).Code.ShouldBe(ExitCodes.Done);
    }

    [Fact]
    public void A_file_that_is_none_is_refused_in_one_line()
    {
        using TemporaryHome home = Home().With("broken.json", "{ \"resourceType\": \"Bun");
        CommandRun.Of(home, "import", "fhir", home.At("broken.json")).ErrorLines.ShouldHaveSingleItem();
        CommandRun.Of(home, "import", "fhir", home.At("gone.json")).ErrorLines.ShouldHaveSingleItem().ShouldContain("there is no such file");
        Events(home).OfType<ReadingImported>().ShouldBeEmpty();
    }

    private static TemporaryHome Home() => InventedHome.AfterTheRound()
        .With("home.json", """{ "timeZone": "America/Chicago", "aide": "nurse-1", "exchange": { "residents": "https://home.example/residents" } }""")
        .With("past.json", Past);

    private static IReadOnlyList<OrderedLimit> Limits(TemporaryHome home) =>
        App.Homes.Home.Open(home.Folder, TimeZoneInfo.FindSystemTimeZoneById("America/Chicago")).Home!.Roster.ById("r1")!.OrderedLimits;

    private static IReadOnlyList<JournalEvent> Events(TemporaryHome home)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        return journal.All();
    }
}
