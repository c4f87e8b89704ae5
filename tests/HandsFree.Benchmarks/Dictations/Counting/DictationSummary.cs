using HandsFree.Benchmarks.Statistics;

namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>What is counted of all dictations of one miss rate. Times are seconds of the simulated room, medians.</summary>
internal sealed record DictationSummary
{
    /// <summary>Share of wrong read-backs that the aide missed.</summary>
    public required double MissRate { get; init; }

    /// <summary>Another value saved than the one that was said.</summary>
    public required Share WrongSaved { get; init; }

    /// <summary>Readings and refusals saved that nobody said, per dictation.</summary>
    public required Share SavedUnsaid { get; init; }

    /// <summary>Of dictations in which nobody got in the way: saved, and nothing said twice but as planned.</summary>
    public required Share FirstTry { get; init; }

    /// <summary>The same of all dictations.</summary>
    public required Share FirstTryWithDisturbances { get; init; }

    /// <summary>Said twice as planned: reported values, confusable ones, a weak engine.</summary>
    public required Share SaidTwiceAsPlanned { get; init; }

    /// <summary>Read back wrong at least once.</summary>
    public required Share ReadBackWrong { get; init; }

    /// <summary>Not saved at all.</summary>
    public required Share NotSaved { get; init; }

    /// <summary>Texts of the program for a value, mean.</summary>
    public required double PromptsPerValue { get; init; }

    /// <summary>Whole sets (five signs, all saved, no count with tones, nobody in the way) behind the set times.</summary>
    public required int Sets { get; init; }

    /// <summary>A whole set.</summary>
    public required double SetSeconds { get; init; }

    /// <summary>Of a set: the aide is heard.</summary>
    public required double SetAideSeconds { get; init; }

    /// <summary>Of a set: the program is heard.</summary>
    public required double SetProgramSeconds { get; init; }

    /// <summary>Of a set: neither; ends of speech, decoding, and the aide's reaction of 0.6 s.</summary>
    public required double SetQuietSeconds { get; init; }

    /// <summary>From the door to the first reading.</summary>
    public required double IdentitySeconds { get; init; }

    /// <summary>Counts.</summary>
    public static DictationSummary Of(double missRate, IReadOnlyList<VisitResult> visits)
    {
        List<DictationRow> rows = [.. visits.SelectMany(v => v.Rows).Where(r => !r.Refused)];
        List<DictationRow> straight = [.. rows.Where(r => !r.Disturbed)];
        int unsaidCount = visits.SelectMany(v => v.Findings).Count(f => f.Kind == Finding.Unsaid);
        var (low, high) = Wilson.Interval(Math.Min(unsaidCount, rows.Count), rows.Count);
        List<DictationRow[]> sets = [.. visits.Select(v => SetOf(v.Rows)).OfType<DictationRow[]>()];
        return new DictationSummary
        {
            MissRate = missRate,
            WrongSaved = Share.In(rows, r => r.Verdict == Verdict.Wrong),
            SavedUnsaid = new Share(unsaidCount, rows.Count, low, high),
            FirstTry = Share.In(straight, r => r.FirstTry),
            FirstTryWithDisturbances = Share.In(rows, r => r.FirstTry),
            SaidTwiceAsPlanned = Share.In(rows, r => r.SaidTwiceAsPlanned),
            ReadBackWrong = Share.In(rows, r => r.WrongReadBacks > 0),
            NotSaved = Share.In(rows, r => r.Verdict == Verdict.NotSaved),
            PromptsPerValue = rows.Count == 0 ? 0 : rows.Average(r => r.Prompts),
            Sets = sets.Count,
            SetSeconds = Median(sets.Select(s => s.Sum(r => r.Seconds))),
            SetAideSeconds = Median(sets.Select(s => s.Sum(r => r.AideSeconds))),
            SetProgramSeconds = Median(sets.Select(s => s.Sum(r => r.ProgramSeconds))),
            SetQuietSeconds = Median(sets.Select(s => s.Sum(r => r.Seconds - r.AideSeconds - r.ProgramSeconds))),
            IdentitySeconds = Median(visits.Select(v => v.IdentitySeconds)),
        };
    }

    /// <summary>Writes it for people.</summary>
    public void Write(TextWriter output)
    {
        output.WriteLine(FormattableString.Invariant($"Wrong read-backs missed: {MissRate}"));
        output.WriteLine($"  wrong values saved        {WrongSaved}");
        output.WriteLine($"  saved although not said   {SavedUnsaid}");
        output.WriteLine($"  first try                 {FirstTry}  (nobody in the way)");
        output.WriteLine($"  first try, all            {FirstTryWithDisturbances}");
        output.WriteLine($"  said twice as planned     {SaidTwiceAsPlanned}");
        output.WriteLine($"  read back wrong           {ReadBackWrong}");
        output.WriteLine($"  not saved at all          {NotSaved}");
        output.WriteLine(FormattableString.Invariant($"  prompts per value {PromptsPerValue:0.00}; a set of five {SetSeconds:0.0} s (aide {SetAideSeconds:0.0}, program {SetProgramSeconds:0.0}, quiet {SetQuietSeconds:0.0}; {Sets} sets); identification {IdentitySeconds:0.0} s"));
    }

    private static DictationRow[]? SetOf(IReadOnlyList<DictationRow> rows)
    {
        DictationRow[] five = [.. rows.Where(r => !r.Recheck && r.Sign is not ("weight" or "pain"))];
        return five.Length == 5 && Array.TrueForAll(five, r => r is { Verdict: Verdict.Right, Counted: false, Disturbed: false, Refused: false }) ? five : null;
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
    }
}
