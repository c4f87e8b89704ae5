using HandsFree.Benchmarks.Comparing;
using HandsFree.Benchmarks.Results;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Comparing;

public sealed class ComparisonTests
{
    private static readonly HearingResult Before = Rows.Result(
        "set", (Verdict.Right, 0.99), (Verdict.Right, 0.97), (Verdict.WrongValue, 0.96), (Verdict.NotHeard, 0), (Verdict.LetIn, 0.8), (Verdict.Refused, 0));

    private static readonly HearingResult After = Rows.Result(
        "set", (Verdict.Right, 0.95), (Verdict.NotHeard, 0), (Verdict.Right, 0.9), (Verdict.NotHeard, 0), (Verdict.Refused, 0), (Verdict.Refused, 0));

    [Fact]
    public void The_same_recordings_are_compared_one_by_one() => Golden.Match(Text(Before, After));

    [Fact]
    public void Other_recordings_are_compared_share_by_share() => Golden.Match(Text(Before, Rows.Result("other", (Verdict.Right, 0.95), (Verdict.WrongValue, 0.6))));

    [Fact]
    public void A_run_is_no_better_than_itself() => Text(Before, Before).ShouldContain("No recording is heard otherwise.");

    [Fact]
    public void The_report_of_a_run()
    {
        StringWriter text = new();
        HearingReport.Write(Before, bySpeaker: true, text);
        Golden.Match(text.ToString());
    }

    [Fact]
    public void A_result_that_was_saved_is_the_same_when_it_is_loaded()
    {
        string file = Path.GetTempFileName();
        try
        {
            Before.Save(file);
            string saved = File.ReadAllText(file);
            HearingResult.Load(file).Save(file);
            File.ReadAllText(file).ShouldBe(saved);
            Text(Before, HearingResult.Load(file)).ShouldContain("No recording is heard otherwise.");
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("[]", "no result of \"hearing --json\"")]
    [InlineData("{", "no result of \"hearing --json\"")]
    public void What_is_no_result_is_refused_by_name(string content, string error)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, content);
            Should.Throw<InvalidDataException>(() => HearingResult.Load(file)).Message.ShouldContain(error);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string Text(HearingResult a, HearingResult b)
    {
        StringWriter text = new();
        Comparison.Write(a, b, text);
        return text.ToString();
    }
}
