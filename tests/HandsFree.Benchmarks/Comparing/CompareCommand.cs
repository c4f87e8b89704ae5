using System.CommandLine;
using HandsFree.Benchmarks.Results;

namespace HandsFree.Benchmarks.Comparing;

/// <summary>"compare A.json B.json": what became better or worse, by more than noise or not.</summary>
internal static class CompareCommand
{
    public static Command Make()
    {
        Argument<string> first = new("A.json") { Description = "Result of hearing --json" };
        Argument<string> second = new("B.json") { Description = "Another one" };
        Command command = new("compare", "What became better or worse from one result of hearing to another, with confidence intervals") { first, second };
        command.SetAction(parsed => Failures.Told(Console.Error, () =>
        {
            Comparison.Write(HearingResult.Load(parsed.GetValue(first)!), HearingResult.Load(parsed.GetValue(second)!), Console.Out);
            return 0;
        }));
        return command;
    }
}
