using HandsFree.App.Files;
using HandsFree.Language.Grammars;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a file that never ends, or is larger than the memory, in the place of one that people write.</summary>
public sealed class FilesWithoutEndTests
{
    private const string Endless = "/dev/zero";

    [Theory]
    [InlineData("home.json")]
    [InlineData("roster.json")]
    [InlineData("rules.json")]
    public void A_file_of_the_home_that_never_ends_is_refused(string file)
    {
        Assert.SkipUnless(File.Exists(Endless), "this system has no such device");
        using TemporaryHome home = new();
        File.CreateSymbolicLink(home.At(file), Endless);

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "handover");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain($"{file}: larger than 10 MB");
    }

    [Theory]
    [InlineData("in.csv", "10 MB")]
    [InlineData("in.json", "50 MB")]
    public void So_is_an_import(string file, string bound)
    {
        Assert.SkipUnless(File.Exists(Endless), "this system has no such device");
        using TemporaryHome home = InventedHome.New();
        File.CreateSymbolicLink(home.At(file), Endless);

        CommandRun.Of(home, "residents", "import", home.At(file)).Error.ShouldContain($"{file}: larger than {bound}");
    }

    [Fact]
    public void So_is_a_rule_file_that_is_tried()
    {
        Assert.SkipUnless(File.Exists(Endless), "this system has no such device");
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "rules", "trial", Endless + ".csv", "--rules", Endless).Code.ShouldBe(2);
    }

    [Fact]
    public void So_is_a_grammar()
    {
        Assert.SkipUnless(File.Exists(Endless), "this system has no such device");
        Should.Throw<GrammarException>(() => Grammar.Load(Endless)).Message.ShouldContain("longer than 1,000,000 characters");
    }

    [Fact]
    public void A_pin_file_that_never_ends_is_no_pin()
    {
        Assert.SkipUnless(File.Exists(Endless), "this system has no such device");
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.With(home, s => s with { Variable = name => name == "HANDSFREE_PIN_FILE" ? Endless : s.Variable(name) }, "journal", "list");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("HANDSFREE_PIN_FILE");
    }

    [Fact]
    public void One_byte_more_than_the_bound_is_too_much_and_the_bound_itself_is_not()
    {
        using TemporaryHome folder = new();
        File.WriteAllBytes(folder.At("some.csv"), new byte[1000]);

        BoundedFile.Read(folder.At("some.csv"), 1000).Content!.Length.ShouldBe(1000);
        BoundedFile.Read(folder.At("some.csv"), 999).Error.ShouldNotBeNull();
    }
}
