using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a spreadsheet whose cells hold escape sequences or turn the direction of writing, imported by somebody who sees
/// nothing of it.</summary>
public sealed class TableThatSteersTests
{
    public static TheoryData<string> Kinds => [.. Steering.Kinds.Where(k => k is not ("\r" or "\ufeff"))];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_is_imported_and_the_cell_is_named(string steers)
    {
        using TemporaryHome home = InventedHome.New();
        string before = File.ReadAllText(home.At("roster.json"));
        home.With("in.csv", $"id,name,room,born\nr9,\"Ada {steers}Quill\",7,1931-03-09\n");

        CommandRun run = CommandRun.Of(home, "residents", "import", home.At("in.csv"));

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("in.csv(2,2): \"name\" holds ");
        Steering.Steers(run.Out + run.Error).ShouldBeFalse();
        File.ReadAllText(home.At("roster.json")).ShouldBe(before);
    }

    [Fact]
    public void An_id_and_a_column_s_name_are_looked_at_too()
    {
        using TemporaryHome home = InventedHome.New();
        home.With("id.csv", $"id,name,room,born\nr{Steering.Backwards}9,Ada Quill,7,1931-03-09\n").With("column.csv", $"id,name,room,born,{Steering.Title}\nr9,Ada,7,1931-03-09,x\n");

        CommandRun.Of(home, "residents", "import", home.At("id.csv")).ErrorLines[0].ShouldContain("(2,1): \"id\" holds a character that turns the direction of writing (U+202E)");
        CommandRun.Of(home, "residents", "import", home.At("column.csv")).ErrorLines[0].ShouldContain("(1,5): a column's name holds an escape character (U+001B)");
    }

    [Fact]
    public void A_cell_of_a_novel_is_refused()
    {
        using TemporaryHome home = InventedHome.New();
        home.With("in.csv", $"id,name,room,born\nr9,{new string('a', 5_000)},7,1931-03-09\n");

        CommandRun.Of(home, "residents", "import", home.At("in.csv")).Error.ShouldContain("\"name\" has more than 1000 characters");
    }
}
