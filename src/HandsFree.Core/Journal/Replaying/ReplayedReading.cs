using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal.Replaying;

/// <summary>A reading that was decided again.</summary>
/// <param name="Sequence">Its number in the journal.</param>
/// <param name="Recorded">The reading, with what was decided then.</param>
/// <param name="Again">What the rules of its day say now; null where they were not kept or are broken.</param>
/// <param name="Today">What today's rules say; null where the resident is not on the roster any more.</param>
/// <param name="RosterKnown">Whether the residents of its day were kept; else those of today decided again too.</param>
public sealed record ReplayedReading(long Sequence, ReadingRecorded Recorded, Decision? Again, Decision? Today, bool RosterKnown)
{
    /// <summary>Whether the rules of its day say what they said; null where that can't be tried.</summary>
    public bool? IsSame => Again is null ? null : Again.Outcome == Recorded.Decision.Outcome;

    /// <summary>Whether today's rules say something else.</summary>
    public bool IsOtherToday => Today is not null && Today.Outcome != Recorded.Decision.Outcome;
}
