using HandsFree.App.Homes;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class ResidentsCommandTests
{
    private const string First = """
        id,name,room,bed,born,band number,ordered limits,usual values,schedule
        r1,Ada Quill,12,a,1931-03-09,4711,pulse 50-110 by Dr Invented on 2026-02-01 until 2026-03-05 07:00,temperature 97.8 mouth,weight monthly 1
        r2,Eva Quill,12,b,1931-03-09,,,,
        r3,Cy Marsh,3,,1928-02-29,,,,
        """;

    private const string Second = """
        id,name,room,bed,born
        r1,Ada Quill,14,,1931-03-09
        r3,Cy Marsh,3,,1928-02-29
        r4,Cy Marsh,4,,1935-05-05
        """;

    [Fact]
    public void A_first_import_is_taken_and_read_again_as_it_was()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", InventedHome.Settings).With("first.csv", First);

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("first.csv"));

        run.Code.ShouldBe(0);
        run.Lines[^1].ShouldBe("imported");
        CommandRun again = CommandRun.Of(home, "residents", "import", home.At("first.csv"));
        again.Lines.ShouldBe(["3 residents: 0 new, 0 changed, 3 as before; 0 gone"]);
        File.Exists(home.At("roster.json.new")).ShouldBeFalse();
    }

    [Fact]
    public void A_second_import_shows_what_changes_and_waits_for_a_yes()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", InventedHome.Settings).With("first.csv", First).With("second.csv", Second);
        CommandRun.Of(home, "residents", "import", home.At("first.csv"));
        string before = File.ReadAllText(home.Folder.RosterFile);

        CommandRun dry = CommandRun.Of(home, "residents", "import", home.At("second.csv"), "--dry-run");
        CommandRun unasked = CommandRun.Of(home, "residents", "import", home.At("second.csv"));
        CommandRun no = CommandRun.With(home, s => s with { IsInteractive = true, In = new StringReader("no\n") }, "residents", "import", home.At("second.csv"));

        dry.Code.ShouldBe(0);
        unasked.Code.ShouldBe(2);
        unasked.Error.ShouldContain("run it again with --yes");
        no.Code.ShouldBe(2);
        File.ReadAllText(home.Folder.RosterFile).ShouldBe(before);
        CommandRun yes = CommandRun.With(home, s => s with { IsInteractive = true, In = new StringReader("yes\n") }, "residents", "import", home.At("second.csv"));
        yes.Code.ShouldBe(0);
        Golden.Match(dry.Out + "\n" + CommandRun.Of(home, "residents", "list").Out + "\n" + CommandRun.Of(home, "residents", "show", "r1").Out);
    }

    [Fact]
    public void Nothing_is_half_imported()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", InventedHome.Settings).With("first.csv", First + "\nr5,,0,z,yesterday,,,,\n");

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("first.csv"));

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.ErrorLines.Length.ShouldBe(4);
        File.Exists(home.Folder.RosterFile).ShouldBeFalse();
    }

    [Fact]
    public void Nobody_leaves_with_an_open_report()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("second.csv", "id,name,room,born\nr3,Cy Marsh,3,1928-02-29\n");

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("second.csv"), "--yes");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("r1 Ada Quill, room 12 bed a would be gone with a report that no nurse has acknowledged");
        Home.Open(home.Folder, TimeZoneInfo.Utc).Home!.Roster.Residents.Count.ShouldBe(3);
    }

    [Fact]
    public void A_FHIR_bundle_leaves_what_it_does_not_speak_of()
    {
        using TemporaryHome home = InventedHome.New().With("bundle.json", """
            { "resourceType": "Bundle", "type": "collection", "entry": [
              { "resource": { "resourceType": "Patient", "id": "r1", "name": [ { "given": ["Ada"], "family": "Quill" } ], "birthDate": "1931-03-09" } },
              { "resource": { "resourceType": "Location", "id": "room7", "name": "Room 7" } },
              { "resource": { "resourceType": "Encounter", "id": "e1", "status": "in-progress", "class": { "code": "IMP" }, "subject": { "reference": "Patient/r1" }, "location": [ { "location": { "reference": "Location/room7" } } ] } } ] }
            """);

        CommandRun.Of(home, "residents", "import", home.At("bundle.json"), "--yes").Code.ShouldBe(0);

        var ada = Home.Open(home.Folder, TimeZoneInfo.Utc).Home!.Roster.Residents.ShouldHaveSingleItem();
        (ada.Room, ada.Bed, ada.BandNumber).ShouldBe((7, null, "4711"));
        ada.UsualValues.ShouldHaveSingleItem();
        ada.Moved.ShouldBe(new(12, "a", new(2026, 3, 3)));
    }

    [Theory]
    [InlineData("roster.xlsx", "is neither .csv nor .json")]
    [InlineData("nowhere.csv", "there is no such file")]
    public void Another_file_is_refused(string name, string says)
    {
        using TemporaryHome home = new();
        File.WriteAllText(home.At("roster.xlsx"), "");

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At(name));

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(says);
        CommandRun.Of(home, "residents", "show", "r9").Error.ShouldContain("there is no resident with the id \"r9\"");
    }
}
