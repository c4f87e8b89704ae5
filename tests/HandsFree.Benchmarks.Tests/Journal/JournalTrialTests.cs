using HandsFree.Benchmarks.Journals;
using HandsFree.Benchmarks.Journals.Faults;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Journal;

/// <summary>The short form of each trial; the full ones are the commands journal-kill, -flip, -power-cut and -faults.</summary>
public sealed class JournalTrialTests
{
    [Theory]
    [InlineData("full disk")]
    [InlineData("file limit")]
    [InlineData("read-only")]
    [InlineData("locked")]
    [InlineData("writers")]
    [InlineData("truncated")]
    [InlineData("clock")]
    [InlineData("calendar")]
    public void What_must_hold_in_a_fault_holds(string fault)
    {
        string outcome = Fault.All.Single(f => f.Name == fault).Try(1);
        Assert.SkipWhen(outcome.StartsWith("not tried", StringComparison.Ordinal), outcome);
        outcome.ShouldStartWith("held:");
    }

    [Fact]
    public void Every_fault_is_tried_here() =>
        Fault.All.Select(f => f.Name).ShouldBe(["full disk", "file limit", "read-only", "locked", "writers", "truncated", "clock", "calendar"]);

    [Fact]
    public void A_writer_that_is_killed_loses_nothing() => Said(output => KillTrial.Run(3, seed: 3, output)).ShouldContain("with a confirmed value lost 0, broken 0");

    [Fact]
    public void A_flipped_byte_is_found_or_harmless() => Said(output => FlipTrial.Run(60, seed: 3, output)).ShouldContain("missed 0");

    [Fact]
    public void Power_cuts_lose_nothing()
    {
        using StringWriter output = new();
        int code = PowerCutTrial.Run(3, output);
        Assert.SkipWhen(code == 2, output.ToString());
        code.ShouldBe(0, output.ToString());
    }

    private static string Said(Func<TextWriter, int> trial)
    {
        using StringWriter output = new();
        trial(output).ShouldBe(0, output.ToString());
        return output.ToString();
    }
}
