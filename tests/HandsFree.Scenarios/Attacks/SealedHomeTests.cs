using System.Text;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Quantities;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>Threat 6: what is said to be sealed is sealed, its changes are events, and reading leaves a trace.</summary>
public sealed class SealedHomeTests : IDisposable
{
    private readonly TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

    public void Dispose() => home.Dispose();

    [Fact]
    public void No_name_birthday_or_order_lies_open_in_the_home_once_somebody_is_set_up()
    {
        File.Exists(home.Folder.RosterFile).ShouldBeFalse();
        File.Exists(home.Folder.SettingsFile).ShouldBeFalse();
        foreach (string file in Directory.GetFiles(home.Path, "*", SearchOption.AllDirectories))
        {
            Encoding.Latin1.GetString(File.ReadAllBytes(file)).ShouldNotContain("Bo Larkin", Case.Sensitive, file);
        }
    }

    [Fact]
    public void The_residents_are_listed_to_nobody_without_a_PIN_and_who_looks_stands_in_the_record()
    {
        CommandRun.Of(home, "residents", "list").Error.ShouldContain("locked; give a person and PIN");

        home.As("aide-7", "residents", "list").Out.ShouldContain("Bo Larkin");
        home.As("aide-7", "residents", "show", "r1").Code.ShouldBe(0);

        string list = home.As("super-1", "journal", "list").Out;
        list.ShouldContain("viewed by aide-7: residents list");
        list.ShouldContain("viewed by aide-7: residents show r1");
    }

    [Fact]
    public void A_roster_and_settings_put_into_the_folder_are_not_used()
    {
        home.With("roster.json", InventedHome.Roster.Replace("Bo Larkin", "Somebody Else", StringComparison.Ordinal)).With("home.json", """{ "name": "Another" }""");

        home.As("aide-7", "residents", "list").Out.ShouldContain("Bo Larkin");
    }

    [Fact]
    public void An_aide_does_not_change_the_roster_with_its_orders_and_a_nurse_does_under_her_name()
    {
        home.With("all.csv", "id,name,room,bed,born\nr1,Ada Quill,12,a,1931-03-09\nr2,Bo Larkin,14,b,1940-11-30\n");

        home.As("aide-7", "residents", "import", home.At("all.csv"), "--yes").Error.ShouldContain("only a nurse or a supervisor changes the roster");
        home.As("nurse-1", "residents", "import", home.At("all.csv"), "--yes").Code.ShouldBe(0);

        home.As("aide-7", "residents", "list").Out.ShouldContain("room 14");
        home.As("super-1", "journal", "audit").Out.ShouldContain("nurse-1 changed the roster or the ordered limits.");
    }

    [Fact]
    public void A_roster_that_an_aide_writes_past_the_program_is_not_believed()
    {
        using (HomeJournal journal = Open("aide-7"))
        {
            journal.Events.Append(new RosterKept("forged", "aide-7", CommandRun.Now, "hash", """{ "residents": [] }""", TemperatureUnit.Fahrenheit, WeightUnit.Pounds));
        }

        home.As("nurse-1", "residents", "list").Out.ShouldContain("Bo Larkin");
        home.As("super-1", "journal", "audit").Out.ShouldContain("was not believed and nothing follows from it: RosterKept in the name of aide-7, written by an aide; it takes a nurse");
    }

    [Fact]
    public void Settings_and_rules_are_a_supervisor_s_and_an_event()
    {
        home.With("new.json", """{ "name": "Birch House" }""").With("rules.new", """{ "rules": 7 }""");

        home.As("nurse-1", "settings", "import", home.At("new.json")).Error.ShouldContain("only a supervisor changes the settings");
        home.As("super-1", "settings", "import", home.At("new.json")).Code.ShouldBe(0);
        home.As("super-1", "rules", "import", home.At("rules.new")).Code.ShouldBe(2);

        home.As("super-1", "journal", "audit").Out.ShouldStartWith("Birch House");
        home.As("super-1", "journal", "list").Out.ShouldContain("home.json changed by super-1");
    }

    private HomeJournal Open(string person) =>
        HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking(person) }, null)).Journal!;
}
