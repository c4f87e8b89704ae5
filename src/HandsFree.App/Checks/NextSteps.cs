namespace HandsFree.App.Checks;

/// <summary>What to do next, after the self-test: what stands in the way of a round first.</summary>
internal static class NextSteps
{
    /// <summary>More than three nobody reads.</summary>
    public const int Most = 3;

    /// <summary>A home's way to its first round, in its order: the check that tells whether a step is done, and the step.</summary>
    private static readonly (string Check, string Step)[] Way =
    [
        ("home", "bring the residents in: handsfree start asks for all that a home needs (or handsfree residents import FILE)"),
        ("people", "set up a supervisor, and lock the recovery key away: handsfree people add PERSON --role supervisor"),
        ("microphone", "plug a headset in and choose it: handsfree devices --microphone NAME --keep"),
        ("voice", "have a voice: without it read-backs are shown, not spoken"),
    ];

    /// <summary>At most three lines, the most urgent first.</summary>
    /// <param name="results">Of the self-test.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<CheckResult> results)
    {
        IEnumerable<string> broken = results.Where(r => r.State == CheckState.Failed).Select(r => $"mend \"{r.Name}\": {r.Text}");
        IEnumerable<string> missing = Way.Where(w => results.Any(r => r.Name == w.Check && r.State == CheckState.Warning)).Select(w => w.Step);
        string[] always = ["go round: handsfree round (\"handsfree help round\")", "copy the record after each round: handsfree journal backup FILE", "print the aide's card: handsfree help card --page FILE.html"];
        return [.. broken.Concat(missing).Concat(results.Any(r => r.State == CheckState.Failed) ? [] : always).Take(Most)];
    }
}
