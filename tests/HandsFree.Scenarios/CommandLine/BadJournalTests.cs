using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>A journal that can't be used: one line that says what it is and what to do, exit code 2, nothing changed, by every command that
/// opens it.</summary>
public sealed class BadJournalTests
{
    private static readonly string[][] Commands =
    [
        ["journal", "list"],
        ["journal", "replay"],
        ["journal", "audio", "list"],
        ["journal", "amend", "error", "3", "--because", "a test", "--yes"],
        ["people", "list"],
        ["handover", "--ask", "handover"],
    ];

    [Theory]
    [InlineData("zero bytes", "the file has zero bytes")]
    [InlineData("not SQLite", "not a SQLite file")]
    [InlineData("another application", "a SQLite file of another application (id 1234)")]
    [InlineData("newer", "written by a newer version (format 9, this program knows 3); use the newer program")]
    [InlineData("another device", "written on another device; bring a backup of it in")]
    [InlineData("no PIN", "locked; give a person and PIN")]
    [InlineData("wrong PIN", "no such person with that PIN")]
    public void One_line_exit_code_2_and_nothing_changed(string kind, string says)
    {
        foreach (string[] command in Commands)
        {
            using TemporaryHome home = InventedHome.AfterTheRound();
            Func<string, string?> given = Made(kind, home);
            byte[] before = File.ReadAllBytes(home.Folder.JournalFile);

            CommandRun run = CommandRun.With(home, s => s with { Variable = name => given(name) ?? s.Variable(name) }, command);

            string what = $"{kind}: {string.Join(' ', command)}";
            run.Code.ShouldBe(2, what);
            run.ErrorLines.ShouldHaveSingleItem(what).ShouldContain(says, Case.Sensitive, what);
            File.ReadAllBytes(home.Folder.JournalFile).ShouldBe(before, what);
        }
    }

    [Theory]
    [InlineData("zero bytes", "the file has zero bytes")]
    [InlineData("not SQLite", "not a SQLite file")]
    [InlineData("newer", "written by a newer version")]
    public void Verifying_and_copying_say_it_too(string kind, string says)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        Made(kind, home);

        foreach (string[] command in new[] { new[] { "journal", "verify" }, ["journal", "backup", home.At("copy.db")] })
        {
            CommandRun run = CommandRun.Of(home, command);
            run.Code.ShouldBe(2, run.Out + run.Error);
            run.ErrorLines.ShouldHaveSingleItem().ShouldContain(says);
        }

        File.Exists(home.At("copy.db")).ShouldBeFalse();
    }

    private static Func<string, string?> Made(string kind, TemporaryHome home)
    {
        string file = home.Folder.JournalFile;
        switch (kind)
        {
            case "zero bytes":
                File.WriteAllBytes(file, []);
                break;
            case "not SQLite":
                File.WriteAllText(file, "pulse 72, on paper");
                break;
            case "another application":
                File.Delete(file);
                Run(file, "PRAGMA application_id = 1234; CREATE TABLE note (text TEXT);");
                break;
            case "newer":
                Run(file, "PRAGMA user_version = 9;");
                break;
            case "another device":
                string elsewhere = home.At("elsewhere");
                return name => name == "HANDSFREE_STATE" ? elsewhere : null;
            default:
                home.With("pin", "heron lamp 24").With("wrong", "nurse-1 quiet boat 58");
                CommandRun.With(home, s => s with { Variable = name => name == "HANDSFREE_NEW_PIN_FILE" ? home.At("pin") : s.Variable(name) }, "people", "add", "nurse-1", "--role", "supervisor").Code.ShouldBe(0);
                return name => kind == "wrong PIN" && name == "HANDSFREE_PIN_FILE" ? home.At("wrong") : null;
        }

        return _ => null;
    }

    private static void Run(string file, string statements)
    {
        using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statements;
        command.ExecuteNonQuery();
    }
}
