using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Homes;

public sealed class PathTests
{
    [Fact]
    public void The_home_is_where_the_variable_says_else_in_the_user_s_data_folder()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the XDG folders are those of other systems");
        With(("HANDSFREE_HOME", "/h")).Home.ShouldBe("/h");
        With(("XDG_DATA_HOME", "/data"), ("HOME", "/me")).Home.ShouldBe("/data/handsfree/home");
        With(("HOME", "/me")).Home.ShouldBe("/me/.local/share/handsfree/home");
    }

    [Fact]
    public void The_option_comes_before_the_variable()
    {
        using TemporaryHome named = InventedHome.New();
        using TemporaryHome variable = new();

        CommandRun run = CommandRun.Of(variable, "handover", "--ask", "handover", "--home", named.Path);

        run.Code.ShouldBe(0);
        CommandRun.Of(variable, "handover", "--ask", "handover").Error.ShouldContain("no residents");
        CommandRun.Of(variable, "--home", named.Path, "handover", "--ask", "handover").Out.ShouldBe(run.Out);
    }

    [Fact]
    public void Models_are_looked_for_in_the_named_folder_and_where_set_up_puts_them()
    {
        With(("HANDSFREE_TOOLS", "/tools")).Models.ShouldBe([Path.Combine("/tools", "models")]);
        With(("HANDSFREE_TOOLS", "/tools"), ("HANDSFREE_MODELS", "/m")).Models.ShouldBe(["/m", Path.Combine("/tools", "models")]);
    }

    [Fact]
    public void What_set_up_fetched_lies_in_the_checkout_that_the_program_was_built_in()
    {
        using TemporaryHome checkout = new TemporaryHome().With("HandsFree.sln", "");
        string program = Directory.CreateDirectory(checkout.At("src/bin")).FullName;

        With(program).Tools.ShouldBe(checkout.At(".handsfree"));
    }

    [Fact]
    public void An_installed_program_brings_its_tools_along()
    {
        using TemporaryHome installed = new();
        Directory.CreateDirectory(installed.At("app/tools"));

        With(installed.At("app")).Tools.ShouldBe(installed.At("app/tools".Replace('/', Path.DirectorySeparatorChar)));
        With(installed.At("app")).FetchAgain.ShouldBe("install HandsFree again: a part of it is missing");
    }

    [Fact]
    public void The_cache_is_beside_the_tools_where_those_can_be_written_else_in_the_user_s_cache_folder()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the XDG folders are those of other systems");
        using TemporaryHome tools = new();

        Directory.GetFileSystemEntries(tools.Path).ShouldBeEmpty();
    }

    [Fact]
    public void The_home_s_folder_is_closed_to_other_users()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows closes the user's data folder by itself");
        using TemporaryHome parent = new();

        HomeFolder.Make(parent.At("home"));

        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(parent.At("home")).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static ProgramPaths With(params (string Name, string Value)[] variables) => With(Path.GetTempPath(), variables);

    private static ProgramPaths With(string program, params (string Name, string Value)[] variables) => new(new Surroundings
    {
        In = TextReader.Null,
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        Time = TimeProvider.System,
        Variable = name => variables.Where(v => v.Name == name).Select(v => v.Value).FirstOrDefault(),
        ProgramFolder = program,
    });
}
