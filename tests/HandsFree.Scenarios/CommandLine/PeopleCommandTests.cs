using HandsFree.App.Homes;
using HandsFree.App.Demo;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Keys;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class PeopleCommandTests
{
    [Fact]
    public void A_supervisor_is_set_up_first_then_a_PIN_is_needed_and_looks_are_noted()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("pin", "heron lamp 24").With("unlock", "nurse-1 heron lamp 24");

        CommandRun.Of(home, "people", "add", "aide-7", "--role", "aide").Error.ShouldContain("the first person to be set up is a supervisor");
        CommandRun added = With(home, [("HANDSFREE_NEW_PIN_FILE", "pin")], "people", "add", "nurse-1", "--role", "supervisor");

        added.Code.ShouldBe(0, added.Error);
        added.Lines[^1].Trim().Length.ShouldBe(39);
        CommandRun locked = CommandRun.Of(home, "journal", "list");
        locked.Code.ShouldBe(2);
        locked.ErrorLines.ShouldHaveSingleItem().ShouldContain("locked; give a person and PIN");
        CommandRun.Of(home, "journal", "verify").Out.ShouldContain("what is in them was not looked at");
        CommandRun list = With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list");
        list.Code.ShouldBe(0, list.Error);
        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list").Out.ShouldContain("viewed by nurse-1: journal list");
        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "people", "list").Lines.ShouldBe(["nurse-1: supervisor"]);
    }

    [Fact]
    public void A_lost_PIN_is_replaced_with_the_recovery_key()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("pin", "heron lamp 24").With("other", "quiet boat 58");
        string paper = With(home, [("HANDSFREE_NEW_PIN_FILE", "pin")], "people", "add", "nurse-1", "--role", "supervisor").Lines[^1].Trim();
        home.With("paper", paper).With("unlock", "nurse-1 quiet boat 58");

        CommandRun run = With(home, [("HANDSFREE_RECOVERY_FILE", "paper"), ("HANDSFREE_NEW_PIN_FILE", "other")], "people", "recover", "nurse-1");

        run.Code.ShouldBe(0, run.Error);
        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list").Out.ShouldContain("new PIN: nurse-1, by recovery-key with the recovery key");
    }

    [Fact]
    public void A_backup_is_restored_where_no_journal_is_and_says_so_in_the_journal()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        string backup = home.At("backup.db");

        CommandRun.Of(home, "journal", "backup", backup).Out.ShouldContain("a backup of 6 events, verified");
        CommandRun.Of(home, "journal", "restore", backup).Error.ShouldContain("nothing is overwritten");
        File.Delete(home.Folder.JournalFile);
        CommandRun.Of(home, "journal", "restore", backup).Out.ShouldContain("restored, 7 events, verified");

        CommandRun.Of(home, "journal", "list").Out.ShouldContain("restored from a backup of 6 events, by device");
        CommandRun.Of(home, "journal", "verify").Code.ShouldBe(0);
    }

    [Fact]
    public void A_replay_decides_as_then_where_the_rules_were_kept_and_says_where_they_were_not()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "journal", "replay").Lines[^1].ShouldStartWith("1 readings: by the rules of their day 0 decided as then, 0 not, 1 without their rules");
        using (HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!)
        {
            journal.Desk.KeepRules(Home.Open(home.Folder, TimeZoneInfo.Utc).Home!);
            journal.Desk.KeepRules(Home.Open(home.Folder, TimeZoneInfo.Utc).Home!);
            journal.All().OfType<RulesKept>().ShouldHaveSingleItem();
            journal.Events.Append(InventedHome.Pulse("s-8", "r2", 136, CommandRun.Now));
        }

        CommandRun replay = CommandRun.Of(home, "journal", "replay");
        replay.Code.ShouldBe(0, replay.Out);
        replay.Lines[^1].ShouldStartWith("2 readings: by the rules of their day 1 decided as then, 0 not, 1 without their rules");
    }

    [Fact]
    public void A_replay_takes_the_limits_of_the_readings_day_and_says_where_todays_would_decide_otherwise()
    {
        using TemporaryHome home = InventedHome.New();
        string limited = InventedHome.Roster.Replace(
            "\"usualValues\"",
            "\"orderedLimits\": [{ \"value\": \"pulse\", \"least\": 50, \"greatest\": 100, \"orderedBy\": \"Dr Lund\", \"orderedOn\": \"2026-02-01\" }], \"usualValues\"",
            StringComparison.Ordinal);
        using (HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!)
        {
            Home before = Home.Open(home.Folder, TimeZoneInfo.Utc).Home!;
            journal.Desk.KeepRules(before);
            journal.Desk.KeepRoster(before, before.Roster);
            journal.Events.Append(InventedHome.Pulse("s-1", "r1", 104, CommandRun.Now));
            home.With("roster.json", limited);
            Home after = Home.Open(home.Folder, TimeZoneInfo.Utc).Home!;
            journal.Desk.KeepRoster(after, after.Roster);
            journal.Desk.KeepRoster(after, after.Roster);
            journal.Desk.KeepRoster(before, before.Roster);
            journal.Desk.KeepRoster(after, after.Roster);
            RosterKept[] kept = [.. journal.All().OfType<RosterKept>()];
            kept.ShouldAllBe(k => k.Content != null);
            kept.Length.ShouldBe(4); // what is in force already is not written again
            kept[0].Hash.ShouldBe(kept[2].Hash);
        }

        CommandRun replay = CommandRun.Of(home, "journal", "replay");

        replay.Code.ShouldBe(0, replay.Out);
        replay.Lines[^1].ShouldBe("1 readings: by the rules of their day 1 decided as then, 0 not, 0 without their rules or their resident; today's rules and limits would decide 1 differently");
        replay.Lines[0].ShouldContain("report this shift; today's say report now");
    }

    [Fact]
    public void An_import_stands_in_the_journal_before_the_file_is_replaced()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("all.csv", "id,name,room,bed,born\nr1,Ada Quill,12,a,1931-03-09\nr2,Bo Larkin,14,b,1940-11-30\n");

        CommandRun.Of(home, "residents", "import", home.At("all.csv"), "--yes").Code.ShouldBe(0);

        CommandRun.Of(home, "journal", "list").Lines.Count(l => l.Contains("roster in force: ", StringComparison.Ordinal)).ShouldBe(1);
    }

    [Fact]
    public void A_person_sets_her_own_spoken_digits_and_nobody_elses()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("pin", "heron lamp 24").With("other", "583920").With("unlock", "nurse-1 heron lamp 24").With("hers", "aide-7 583920").With("digits", "47110825");
        With(home, [("HANDSFREE_NEW_PIN_FILE", "pin")], "people", "add", "nurse-1", "--role", "supervisor");
        With(home, [("HANDSFREE_PIN_FILE", "unlock"), ("HANDSFREE_NEW_PIN_FILE", "other")], "people", "add", "aide-7", "--role", "aide").Code.ShouldBe(0);

        With(home, [("HANDSFREE_PIN_FILE", "hers"), ("HANDSFREE_NEW_DIGITS_FILE", "digits")], "people", "digits", "aide-7").Code.ShouldBe(0);
        With(home, [("HANDSFREE_PIN_FILE", "hers"), ("HANDSFREE_NEW_DIGITS_FILE", "digits")], "people", "digits", "nurse-1").Error
            .ShouldContain("only a supervisor sets somebody else's digits");

        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list").Out.ShouldContain("spoken digits set: aide-7, by aide-7");
        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list", "--json").Out.ShouldNotContain("47110825");
    }

    [Fact]
    public void What_the_PIN_file_holds_must_be_a_person_and_a_PIN()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        home.With("unlock", "240713");

        With(home, [("HANDSFREE_PIN_FILE", "unlock")], "journal", "list").Error.ShouldContain("is not \"PERSON PIN\"");
        With(home, [("HANDSFREE_PIN_FILE", "nowhere")], "journal", "list").Error.ShouldContain("the file that HANDSFREE_PIN_FILE names can't be read");
    }

    [Fact]
    public void The_demo_s_PIN_is_one_that_people_may_choose() => DemoPerson.CredentialOf("aide-7").ShouldBeOfType<Credential.Person>();

    private static CommandRun With(TemporaryHome home, (string Variable, string File)[] files, params string[] args) => CommandRun.With(
        home,
        s => s with { Variable = name => files.FirstOrDefault(f => f.Variable == name) is { File: { } file } ? home.At(file) : s.Variable(name) },
        args);
}
