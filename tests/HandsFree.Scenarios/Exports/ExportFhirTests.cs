using System.Text.Json;
using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Exports;

public sealed class ExportFhirTests
{
    [Fact]
    public void The_record_is_written_as_a_transaction_and_the_journal_says_so()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        string file = home.At("out.json");

        CommandRun run = CommandRun.Of(home, "export", "fhir", "--out", file, "--new-patients", "--because", "the records office asked");

        run.Code.ShouldBe(ExitCodes.Done, run.Error);
        run.Out.ShouldContain("up to entry 5; next time --since 5");
        Types(file).ShouldBe(["Patient", "Patient", "Observation", "Provenance", "Communication", "Provenance", "Observation", "Provenance"]);
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        journal.All().OfType<RecordTakenOut>().ShouldHaveSingleItem().What.ShouldBe("FHIR R4");
    }

    [Fact]
    public void After_the_last_entry_there_is_nothing_and_no_file()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        CommandRun run = CommandRun.Of(home, "export", "fhir", "--out", home.At("out.json"), "--since", "5", "--because", "a test");
        run.Out.ShouldBe($"There is nothing after entry 5; no file was written.{Environment.NewLine}");
        File.Exists(home.At("out.json")).ShouldBeFalse();
    }

    [Fact]
    public void A_long_record_becomes_several_files_or_none()
    {
        using TemporaryHome home = InventedHome.New().WithJournal(
            [.. Enumerable.Range(0, 600).Select(i => InventedHome.Pulse($"p-{i}", "r1", 72, CommandRun.Now.AddMinutes(i - 700)))]);

        CommandRun run = CommandRun.Of(home, "export", "fhir", "--out", home.At("out.json"), "--because", "a test");

        run.Code.ShouldBe(ExitCodes.Done, run.Error);
        Directory.GetFiles(home.Path, "out*").Select(Path.GetFileName).Order().ShouldBe(["out-0001.json", "out-0002.json", "out-0003.json"]);
        CommandRun.Of(home, "export", "fhir", "--out", home.At("out.json"), "--because", "a test").ErrorLines.ShouldHaveSingleItem().ShouldContain("is there already");
        if (File.Exists("/dev/full"))
        {
            File.CreateSymbolicLink($"{home.At("again-0001.json")}.new-{Environment.ProcessId}", "/dev/null");
            File.CreateSymbolicLink($"{home.At("again.json")}.new-{Environment.ProcessId}-1", "/dev/full");
            CommandRun full = CommandRun.Of(home, "export", "fhir", "--out", home.At("again.json"), "--because", "a test");
            full.ErrorLines.ShouldHaveSingleItem().ShouldContain("there is no such file now");
            Directory.GetFiles(home.Path, "again.json*").ShouldBeEmpty();
        }
    }

    [Fact]
    public void The_systems_of_identifiers_are_those_of_the_home()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("home.json", """{ "timeZone": "America/Chicago", "exchange": { "residents": "https://home.example/residents" } }""");
        CommandRun.Of(home, "export", "fhir", "--out", home.At("out.json"), "--because", "a test").Code.ShouldBe(ExitCodes.Done);
        File.ReadAllText(home.At("out.json")).ShouldContain("Patient?identifier=https%3A%2F%2Fhome.example%2Fresidents%7Cr1");
        home.With("home.json", """{ "exchange": { "residents": "no uri" } }""");
        CommandRun.Of(home, "export", "fhir", "--out", home.At("again.json"), "--because", "a test").Code.ShouldBe(ExitCodes.BadInput);
    }

    private static IEnumerable<string?> Types(string file)
    {
        using JsonDocument json = JsonDocument.Parse(File.ReadAllBytes(file));
        return [.. json.RootElement.GetProperty("entry").EnumerateArray().Select(e => e.GetProperty("resource").GetProperty("resourceType").GetString())];
    }
}
