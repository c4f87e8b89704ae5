using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: free words and ids given to a command, so that they stand in the record for ever.</summary>
public sealed class WordsThatSteerTests
{
    public static TheoryData<string> Kinds => [.. Steering.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Free_words_are_refused_before_anything_is_done(string steers)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "report", "told", "s-4", "--who", $"nurse{steers}1");

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith("handsfree: what was typed holds ");
        Steering.Steers(run.Error).ShouldBeFalse();
    }

    [Fact]
    public void So_is_the_id_of_a_person()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "people", "add", $"nurse{Steering.Backwards}-1", "--role", "supervisor").Error.ShouldContain("U+202E");
        File.Exists(home.Folder.JournalFile).ShouldBeFalse();
    }
}
