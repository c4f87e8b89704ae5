using System.Text;
using HandsFree.Core.Files;
using HandsFree.Exchange.Rosters;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack, or only a wrong export: JSON that is no FHIR bundle.</summary>
public sealed class ShapesThatAreNoBundleTests
{
    [Fact]
    public void A_list_is_refused_with_what_to_do_and_is_no_error_of_the_program()
    {
        using TemporaryHome home = InventedHome.New();
        home.With("in.json", """[ { "resourceType": "Patient" } ]""");

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("in.json"));

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldEndWith("in.json(1): is a list, not a FHIR resource; export the Patients with their Encounters and Locations in one Bundle");
    }

    [Theory]
    [InlineData("1")]
    [InlineData("\"Bundle\"")]
    [InlineData("null")]
    [InlineData("true")]
    [InlineData("{}")]
    [InlineData("""{ "resourceType": 1 }""")]
    [InlineData("""{ "resourceType": [] }""")]
    [InlineData("""{ "resourceType": "Nothing" }""")]
    [InlineData("""{ "resourceType": "Bundle", "entry": {} }""")]
    [InlineData("""{ "resourceType": "Bundle", "entry": [ null ] }""")]
    [InlineData("""{ "resourceType": "Bundle", "entry": [ [] ] }""")]
    [InlineData("""{ "resourceType": "Bundle", "entry": [ { "resource": [] } ] }""")]
    [InlineData("""{ "resourceType": "Bundle", "type": "collection", "entry": [ { "resource": { "resourceType": "Patient", "name": "Ada" } } ] }""")]
    [InlineData("""{ "resourceType": "Bundle", "type": "collection", "entry": [ { "resource": { "resourceType": "Bundle", "type": "collection", "entry": [ {} ] } } ] }""")]
    [InlineData("")]
    [InlineData("\u0000")]
    public void Whatever_it_is_there_are_errors_and_no_exception(string json) =>
        RosterFhir.Read("in.json", Encoding.UTF8.GetBytes(json)).Errors.ShouldNotBeEmpty();

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{\"a\":", "}")]
    public void Nesting_without_end_is_an_error_with_its_line(string open, string close)
    {
        byte[] deep = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(open, 200_000)) + "1" + string.Concat(Enumerable.Repeat(close, 200_000)));
        List<FileError> errors = [];

        LocatedJson.Read("deep.json", deep, errors).ShouldBeNull();

        errors.ShouldHaveSingleItem().Line.ShouldBe(1);
        RosterFhir.Read("deep.json", deep).Errors.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_large_file_of_many_lines_is_read_once_through_and_each_value_knows_its_line()
    {
        // Lines that were counted anew for each value would take minutes here.
        byte[] many = Encoding.UTF8.GetBytes("[\n" + string.Join(",\n", Enumerable.Range(0, 400_000)) + "\n]");
        List<FileError> errors = [];

        LocatedNode top = LocatedJson.Read("many.json", many, errors)!;

        top.Items.Count.ShouldBe(400_000);
        top.Items[^1].Line.ShouldBe(400_001);
        top.Items[123_456].Line.ShouldBe(123_458);
    }
}
