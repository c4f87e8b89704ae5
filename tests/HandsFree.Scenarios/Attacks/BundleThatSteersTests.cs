using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a FHIR bundle whose names, ids or places steer the terminal or turn the direction of writing.</summary>
public sealed class BundleThatSteersTests
{
    [Theory]
    [InlineData("Quill\\u001b[2J", "r9")]
    [InlineData("Qui\\u202ell", "r9")]
    [InlineData("Quill", "r\\u200b9")]
    public void Nothing_is_imported_and_the_patient_is_named(string family, string id)
    {
        using TemporaryHome home = InventedHome.New();
        string before = File.ReadAllText(home.At("roster.json"));
        home.With("in.json", Bundle(family, id));

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("in.json"));

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("Patient/p1: the text \"");
        run.Error.ShouldContain("which cannot be seen; write the text again without it");
        Steering.Steers(run.Out + run.Error).ShouldBeFalse();
        File.ReadAllText(home.At("roster.json")).ShouldBe(before);
    }

    [Fact]
    public void The_same_bundle_without_it_is_imported()
    {
        using TemporaryHome home = InventedHome.New();
        home.With("in.json", Bundle("Quill", "r9"));

        CommandRun.Of(home, "residents", "import", home.At("in.json"), "--dry-run").Code.ShouldBe(0);
    }

    private static string Bundle(string family, string id) => $$"""
        { "resourceType": "Bundle", "type": "collection", "entry": [
          { "resource": { "resourceType": "Patient", "id": "p1", "identifier": [{ "value": "{{id}}" }], "birthDate": "1931-03-09",
              "name": [{ "family": "{{family}}", "given": ["Ada"] }] } },
          { "resource": { "resourceType": "Location", "id": "l1", "name": "7",
              "physicalType": { "coding": [{ "system": "http://terminology.hl7.org/CodeSystem/location-physical-type", "code": "ro" }] } } },
          { "resource": { "resourceType": "Encounter", "id": "e1", "status": "in-progress",
              "class": { "system": "http://terminology.hl7.org/CodeSystem/v3-ActCode", "code": "IMP" },
              "subject": { "reference": "Patient/p1" }, "location": [{ "location": { "reference": "Location/l1" }, "status": "active" }] } }
        ] }
        """;
}
