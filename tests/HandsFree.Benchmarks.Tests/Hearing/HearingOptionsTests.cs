using System.CommandLine;
using HandsFree.Benchmarks.Hearing;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Hearing;

public sealed class HearingOptionsTests
{
    [Theory]
    [InlineData("one")]
    [InlineData("one two --every 6 --threads 2 --noise babble --snr 10.5 --microphone cut:80,level:-30 --seed 7")]
    [InlineData("one --listening-for confirmation")]
    [InlineData("one --grammar own.jsgf --noise kitchen.wav")]
    public void A_plan_says_itself_as_arguments(string line)
    {
        HearingPlan plan = Plan(line.Split(' '));

        HearingPlan again = Plan([.. plan.Arguments()]);

        again.ShouldBe(plan with { Folders = again.Folders });
        again.Folders.ShouldBe(plan.Folders);
    }

    [Fact]
    public void What_was_asked_for_is_planned()
    {
        HearingPlan plan = Plan("one", "two", "--every", "6", "--noise", "babble", "--snr", "10.5", "--seed", "7", "--microphone", "band8k");

        plan.Folders.ShouldBe(["one", "two"]);
        (plan.Every, plan.Threads, plan.Noise, plan.SnrDb, plan.Seed, plan.Microphone!.Text, plan.State, plan.GrammarFile)
            .ShouldBe((6, 1, "babble", 10.5, 7, "band8k", null, null));
    }

    [Theory]
    [InlineData("--every 0", "--every counts from 1")]
    [InlineData("--threads -1", "--threads counts from 1")]
    [InlineData("", "Required argument missing")]
    public void A_line_that_can_not_be_is_refused(string line, string error)
    {
        string[] folders = line.Length == 0 ? [] : ["one"];

        Parse([.. folders, .. line.Split(' ', StringSplitOptions.RemoveEmptyEntries)]).Errors.ShouldContain(e => e.Message.Contains(error));
    }

    private static HearingPlan Plan(params string[] arguments)
    {
        (ParseResult parsed, HearingOptions options) = Parsed(arguments);
        parsed.Errors.ShouldBeEmpty();
        return options.Read(parsed);
    }

    private static ParseResult Parse(string[] arguments) => Parsed(arguments).Result;

    private static (ParseResult Result, HearingOptions Options) Parsed(string[] arguments)
    {
        HearingOptions options = new();
        Command command = new("hearing");
        options.AddTo(command);
        return (command.Parse(arguments), options);
    }
}
