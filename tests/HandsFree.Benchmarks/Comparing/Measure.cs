using HandsFree.Benchmarks.Results;

namespace HandsFree.Benchmarks.Comparing;

/// <summary>Something that may hold of a recording's result.</summary>
/// <param name="Name">What the tables call it.</param>
/// <param name="Holds">Whether it holds.</param>
internal sealed record Measure(string Name, Func<HeardRow, bool> Holds)
{
    /// <summary>Those that runs are compared by.</summary>
    public static IReadOnlyList<Measure> All { get; } =
    [
        new("right", r => r.Verdict is Verdict.Right or Verdict.Refused),
        new("wrong value", r => r.Verdict == Verdict.WrongValue),
        new("wrong other", r => r.Verdict == Verdict.WrongOther),
        new("not heard", r => r.Verdict == Verdict.NotHeard),
        new("outside grammar", r => r.Verdict == Verdict.OutsideGrammar),
        new("let in", r => r.Verdict == Verdict.LetIn),
        new("stray yes", r => r.StrayYes),
        new("wrong and sure", r => r.IsWrong && r.Best!.Probability > HearingReport.Sure),
    ];

    /// <summary>How bad a verdict is: 0 right, 1 must be said again, 2 something else was heard, 3 another value was heard.</summary>
    public static int Harm(Verdict verdict) => verdict switch
    {
        Verdict.Right or Verdict.Refused => 0,
        Verdict.NotHeard or Verdict.OutsideGrammar => 1,
        Verdict.WrongOther or Verdict.LetIn => 2,
        _ => 3,
    };
}
