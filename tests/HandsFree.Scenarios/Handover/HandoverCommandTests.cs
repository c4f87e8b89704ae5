using System.Text.Json;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

public sealed class HandoverCommandTests
{
    [Fact]
    public void The_exceptions_come_first_and_what_waited_too_long_is_overdue()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "handover");

        run.Code.ShouldBe(0);
        run.Error.ShouldBeEmpty();
        Golden.Match(run.Out);
    }

    [Fact]
    public void With_JSON_there_are_question_answer_and_items()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        JsonElement answered = JsonDocument.Parse(CommandRun.Of(home, "handover", "--ask", "Who was not taken?", "--json").Lines.ShouldHaveSingleItem()).RootElement;

        answered.GetProperty("question").GetString().ShouldBe("Who was not taken?");
        answered.GetProperty("answer").GetString().ShouldStartWith("3 residents.");
        JsonElement[] items = [.. answered.GetProperty("items").EnumerateArray()];
        items.Select(item => item.GetProperty("room").GetInt32()).ShouldBe([12, 12, 3]);
        items[1].GetProperty("bed").GetString().ShouldBe("b");
        items[1].GetProperty("rank").GetString().ShouldBe("not taken");
        items[1].GetProperty("text").GetString()!.ShouldContain("refused");
        items[1].GetProperty("overdue").GetBoolean().ShouldBeFalse();
        items[2].GetProperty("bed").ValueKind.ShouldBe(JsonValueKind.Null);
        items[2].GetProperty("rank").GetString().ShouldBe("nothing yet");
        answered.GetProperty("since").GetString().ShouldBe("2026-03-03T07:00-06:00");
    }

    [Theory]
    [InlineData("room twelve")]
    [InlineData("Room 12?")]
    [InlineData("how is room 12")]
    [InlineData("what happened with room one two")]
    public void A_room_is_asked_for_in_words_and_in_figures(string question)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "handover", "--ask", question).Out.ShouldContain("Room 12 bed A: report now, pulse, one three six, usual seven two");
    }

    [Fact]
    public void Next_repeat_and_goodbye_follow_on_what_was_asked_before()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Typing(home, "handover\n\nnext\nrepeat\nnext\nnext\ngoodbye\nopen reports\n", "handover", "--json");

        run.Code.ShouldBe(0);
        string[] answers = [.. run.Lines.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("answer").GetString()!)];
        answers[0].ShouldContain("Room 12 bed A");
        answers[1].ShouldStartWith("Room 12 bed B");
        answers[2].ShouldBe(answers[1]);
        answers[3].ShouldStartWith("Room 3");
        answers[4].ShouldBe("That is all.");
        answers[5].ShouldBe("Goodbye.");
        answers.Length.ShouldBe(6);
        CommandRun.Of(home, "handover", "--ask", "handover", "--ask", "next").Out.ShouldEndWith(answers[1] + Environment.NewLine);
    }

    [Fact]
    public void What_is_no_question_gets_a_list_of_questions_and_exit_code_2()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun asked = CommandRun.Of(home, "handover", "--ask", "how is the weather");
        CommandRun piped = CommandRun.Typing(home, "how is the weather\nopen reports\n", "handover");
        CommandRun typed = CommandRun.With(home, s => s with { IsInteractive = true, In = new StringReader("weather\ngoodbye\n") }, "handover");

        asked.Code.ShouldBe(2);
        asked.Out.ShouldBeEmpty();
        asked.ErrorLines.ShouldHaveSingleItem().ShouldContain("who needs a recheck, open reports");
        piped.Code.ShouldBe(2);
        piped.Out.ShouldContain("1 open report");
        typed.Code.ShouldBe(0);
        typed.Error.ShouldContain("\"weather\" is no question of the handover");
    }

    [Fact]
    public void Options_lists_what_can_be_asked()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "options");

        run.Code.ShouldBe(0);
        run.Out.ShouldContain("who was not taken");
    }

    [Theory]
    [InlineData("09:00", "1 resident.")]
    [InlineData("2026-03-03T09:00", "1 resident.")]
    [InlineData("10:00", "Nobody refused.")]
    public void The_beginning_of_the_shift_can_be_typed(string began, string says)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "handover", "--ask", "who refused", "--shift-began", began).Out.ShouldStartWith(says);
    }

    [Theory]
    [InlineData("yesterday")]
    [InlineData("25:00")]
    [InlineData("2026-02-30T07:00")]
    public void A_beginning_that_is_no_time_is_refused(string began)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "handover", "--shift-began", began);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain($"--shift-began is \"{began}\"");
    }

    [Fact]
    public void The_home_s_own_word_for_refused_is_used()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("home.json", """{ "timeZone": "America/Chicago", "wording": { "refused": "declined" } }""");

        string text = CommandRun.Of(home, "handover", "--ask", "handover").Out;

        text.ShouldContain("declined");
        text.ShouldNotContain("refused");
    }

    [Fact]
    public void A_home_without_residents_is_refused()
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "handover");

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("roster.json has no residents");
    }

    [Fact]
    public void Before_the_first_round_nobody_was_visited_and_no_journal_is_made()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "handover", "--ask", "handover").Out.ShouldStartWith("3 residents. 3 not visited.");
        File.Exists(home.Folder.JournalFile).ShouldBeFalse();
    }
}
