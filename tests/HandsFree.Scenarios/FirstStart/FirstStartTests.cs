using HandsFree.Scenarios.Reports;
using HandsFree.App.Unlocking;
using HandsFree.App.Checks;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.FirstStart;

public sealed class FirstStartTests
{
    [Fact]
    public void From_an_empty_folder_to_a_home_that_may_begin_a_round_with_Enter_and_a_few_words()
    {
        using TemporaryHome home = new();

        home.With("nurse-1.unlock", "nurse-1 heron lamp 24");
        CommandRun run = Answer(home, "heron lamp 24", "Invented House", "", "celsius", "", "06:00 14:00 22:00", "type", "Ada Quill", "r1", "12", "a", "1931-03-09", "", "nurse-1", "KEY", "no");

        Home opened = Home.Open(home.Folder, TimeZoneInfo.Utc, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking("nurse-1") }, null)).Home!;
        opened.Settings.Name.ShouldBe("Invented House");
        opened.Settings.TimeZone.Id.ShouldBe("America/Chicago"); // this machine's, by the name that every system knows
        opened.Settings.TemperatureUnit.ShouldBe(HandsFree.Core.Quantities.TemperatureUnit.Celsius);
        opened.Settings.Shifts.Select(s => s.Begins.Hour).ShouldBe([6, 14, 22]);
        opened.Roster.Residents.ShouldHaveSingleItem().Name.ShouldBe("Ada Quill");
        PeopleCheck.IsAnybodySetUp(home.Folder, TimeProvider.System).ShouldBe(true);
        File.Exists(home.At("residents-typed.csv")).ShouldBeFalse();
        run.Out.ShouldContain("The round: handsfree round");
        run.Code.ShouldBe(0);
    }

    [Fact]
    public void It_can_be_left_and_goes_on_with_the_next_question()
    {
        using TemporaryHome home = new();

        CommandRun first = Answer(home, "heron lamp 24", "", "", "", "", "", "leave");
        CommandRun second = Answer(home, "heron lamp 24", "?", "leave");

        first.Out.ShouldContain("You can go on at any time: handsfree start");
        File.Exists(home.Folder.SettingsFile).ShouldBeTrue();
        second.Out.ShouldNotContain("1. The home");
        second.Out.ShouldContain("2. The residents");
        second.Out.ShouldContain("A table saved as CSV");
        second.Out.ShouldNotContain("3. You");
    }

    [Fact]
    public void A_wrong_answer_is_said_and_asked_again_and_nothing_wrong_is_kept()
    {
        using TemporaryHome home = new();

        CommandRun run = Answer(home, "heron lamp 24", "", "Atlantis/Harbour", "kelvin", "", "", "", "", "Europe/Helsinki", "", "", "", "leave");

        run.Out.ShouldContain("One of fahrenheit, celsius");
        run.Out.ShouldContain("\"timeZone\" is \"Atlantis/Harbour\"");
        Home.Open(home.Folder, TimeZoneInfo.Utc).Home!.Settings.TimeZone.Id.ShouldBe("Europe/Helsinki");
    }

    [Fact]
    public void A_recovery_key_that_is_not_on_paper_is_asked_for_again()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = Answer(home, "heron lamp 24", "nurse-1", "0", "KEY", "no");

        run.Out.ShouldContain("That is not its end.");
        run.Out.ShouldContain("5. Does it work?");
    }

    [Fact]
    public void A_weak_passphrase_is_refused_and_asked_for_again()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = Answer(home, "1234", "nurse-1", "leave");

        PeopleCheck.IsAnybodySetUp(home.Folder, TimeProvider.System).ShouldBe(false);
        run.Out.ShouldContain("You can go on at any time");
    }

    /// <summary>Answers line by line; "KEY" is the end of the recovery key as it was shown. No sound, the secret typed unseen.</summary>
    private static CommandRun Answer(TemporaryHome home, string secret, params string[] lines)
    {
        Directory.CreateDirectory(home.States);
        File.WriteAllText(home.Folder.SoundFile, """{ "system": "none" }""");
        return CommandRun.With(home, s => s with { In = new Typing(lines, s.Out), ReadHidden = () => secret, Variable = name => home.Unlocking("nurse-1")(name) ?? s.Variable(name) }, "start");
    }

    private sealed class Typing(string[] lines, TextWriter shown) : TextReader
    {
        private int next;

        public override string? ReadLine()
        {
            if (next == lines.Length)
            {
                return null;
            }

            string line = lines[next++];
            return line != "KEY" ? line : shown.ToString()!.Split('\n').Select(l => l.Trim()).Last(l => l.Length == 39)[^4..];
        }
    }
}
