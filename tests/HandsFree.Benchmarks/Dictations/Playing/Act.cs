namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>Something that somebody did in the room.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Again">It would not have been needed had all been understood at once.</param>
internal sealed record Act(ActKind Kind, bool Again);
