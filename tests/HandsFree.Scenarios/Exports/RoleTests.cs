using HandsFree.App.Commands;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Exports;

/// <summary>Who takes the record out, and who lets another system's in: a nurse or a supervisor.</summary>
public sealed class RoleTests
{
    private const string Orders = """
        { "resourceType": "Bundle", "type": "collection", "entry": [
          { "resource": { "resourceType": "Goal", "id": "g", "lifecycleStatus": "active", "description": { "text": "wide" }, "subject": { "identifier": { "value": "r1" } },
              "startDate": "2026-02-01", "expressedBy": { "display": "Dr Example" },
              "target": [ { "measure": { "coding": [ { "system": "http://loinc.org", "code": "8480-6" } ] },
                 "detailRange": { "low": { "value": 90, "system": "http://unitsofmeasure.org", "code": "mm[Hg]" }, "high": { "value": 250, "system": "http://unitsofmeasure.org", "code": "mm[Hg]" } } } ] } }
        ] }
        """;

    [Fact]
    public void An_aide_takes_nothing_out_and_a_nurse_does()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        foreach (string[] export in new string[][] { ["csv", "--out", home.At("x.csv")], ["fhir", "--out", home.At("x.json")] })
        {
            CommandRun aide = home.As("aide-7", ["export", .. export, "--because", "mine"]);
            aide.Code.ShouldBe(ExitCodes.BadInput);
            aide.ErrorLines.ShouldHaveSingleItem().ShouldContain("an aide takes no record out");
            File.Exists(export[2]).ShouldBeFalse();
            home.As("nurse-1", ["export", .. export, "--because", "the family doctor"]).Code.ShouldBe(ExitCodes.Done);
            File.Exists(export[2]).ShouldBeTrue();
        }
    }

    // An aide's "systolic 90 to 250 by Dr Example" must not become a limit.
    [Fact]
    public void An_aide_imports_nothing_and_settles_no_limit_and_a_nurse_does()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople().With("orders.json", Orders);
        home.As("aide-7", "import", "fhir", home.At("orders.json")).ErrorLines.ShouldHaveSingleItem().ShouldContain("an aide imports nothing");
        CommandRun nurse = home.As("nurse-1", "import", "fhir", home.At("orders.json"));
        nurse.Out.ShouldContain("1 proposed limits");

        home.As("aide-7", "import", "accept", "1", "--yes").ErrorLines.ShouldHaveSingleItem().ShouldContain("only a nurse or a supervisor");
        home.As("aide-7", "import", "refuse", "1", "--because", "no").ErrorLines.ShouldHaveSingleItem().ShouldContain("only a nurse or a supervisor");
        home.As("nurse-1", "residents", "show", "r1").Out.ShouldNotContain("250");
        CommandRun accepted = home.As("nurse-1", "import", "accept", "1", "--yes");
        accepted.Code.ShouldBe(ExitCodes.Done, accepted.Error);
        home.As("nurse-1", "residents", "show", "r1").Out.ShouldContain("250");
    }
}
