using HandsFree.Core.Journal;

namespace HandsFree.Core.Rules.Trials;

/// <summary>Readings of one vital sign of one resident that belong together, as the tried rules would have it: a reading, its rechecks,
/// what was reported of them. As in the round, two rechecks of a sign are asked for at most, whichever rules ask, and what is
/// reported is not reported again unless it is graver.</summary>
internal sealed class TrialChain
{
    private const int MostRechecks = 2;

    // In the round a recheck waits until it is done. In old readings nobody wrote what was a recheck: one so long after it was due counts as
    // the first of another chain (common practice, no source).
    private static readonly TimeSpan Lapse = TimeSpan.FromHours(12);
    private DateTimeOffset last;
    private DateTimeOffset? lapses;
    private Outcome reported = Outcome.Accept;

    /// <summary>How many rechecks were asked for.</summary>
    public int Asked { get; private set; }

    /// <summary>The report that waits for a recheck, or null.</summary>
    public Decision? Waiting { get; private set; }

    /// <summary>Whether a reading of that moment is the recheck, or another one of the same set.</summary>
    public bool Takes(DateTimeOffset at) => at - last < RecheckChains.OneSet || at <= lapses;

    /// <summary>Takes a reading with what the rules said of it.</summary>
    /// <returns>Whether a recheck is asked for, and the decision that is reported now; null for none.</returns>
    public (bool Recheck, Decision? Report) Take(DateTimeOffset at, Decision decision)
    {
        Recheck? recheck = Asked < MostRechecks ? decision.Recheck : null;
        Asked += recheck is null ? 0 : 1;
        last = at;
        lapses = recheck is { } asked && asked.After >= RecheckChains.OneSet ? at + asked.After + Lapse : null;
        bool graver = decision.Outcome is Outcome.ReportThisShift or Outcome.ReportNow && decision.Outcome > reported;
        bool now = graver && (recheck is null || decision.Danger);
        Waiting = graver && !now ? decision : null;
        reported = now ? decision.Outcome : reported;
        return (recheck is not null, now ? decision : null);
    }
}
