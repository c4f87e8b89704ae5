using System.Collections.Immutable;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>One resident in this round: what was saved, what waits, what was refused.</summary>
internal sealed record ResidentSet(Resident Resident)
{
    /// <summary>Saved readings and not-takens, oldest first.</summary>
    public ImmutableList<SavedItem> Saved { get; init; } = [];

    /// <summary>How many of them were saved before this visit to the bed.</summary>
    public int SavedBefore { get; init; }

    /// <summary>Rechecks that wait, in the order in which they were asked for.</summary>
    public ImmutableList<WaitingRecheck> Waiting { get; init; } = [];

    /// <summary>How many rechecks of each sign were asked for in this round.</summary>
    public ImmutableDictionary<VitalSign, int> RechecksAsked { get; init; } = ImmutableDictionary<VitalSign, int>.Empty;

    /// <summary>The ids of the readings of each sign that belong together: the first and its rechecks.</summary>
    public ImmutableDictionary<VitalSign, ImmutableList<string>> Chains { get; init; } =
        ImmutableDictionary<VitalSign, ImmutableList<string>>.Empty;

    /// <summary>The gravest report opened for each sign in this round.</summary>
    public ImmutableDictionary<VitalSign, ReportUrgency> Reported { get; init; } = ImmutableDictionary<VitalSign, ReportUrgency>.Empty;

    /// <summary>Values that were answered with no; not offered again unless said digit by digit.</summary>
    public ImmutableHashSet<Quantity> Refused { get; init; } = [];

    /// <summary>Signs whose value was left open.</summary>
    public ImmutableList<VitalSign> Open { get; init; } = [];

    /// <summary>Signs that were not taken, with the reason.</summary>
    public ImmutableDictionary<VitalSign, NotTakenReason> NotTaken { get; init; } = ImmutableDictionary<VitalSign, NotTakenReason>.Empty;

    /// <summary>Signs that were not taken and are asked for again, later in the round.</summary>
    public ImmutableHashSet<VitalSign> AskAgain { get; init; } = [];

    /// <summary>Counts that are read back once the fingers are off the wrist, oldest first.</summary>
    public ImmutableList<HeldCount> Held { get; init; } = [];

    /// <summary>The symptoms that were asked for at this bed, by the sign they were asked for; empty where the answer was no.</summary>
    public ImmutableDictionary<VitalSign, ImmutableHashSet<string>> Symptoms { get; init; } = ImmutableDictionary<VitalSign, ImmutableHashSet<string>>.Empty;

    /// <summary>How far a posture test is.</summary>
    public PostureStep Posture { get; init; }

    /// <summary>Since when the resident stands in a posture test; null where she does not.</summary>
    public DateTimeOffset? StoodAt { get; init; }

    /// <summary>The last pressure of the standing resident that was asked for.</summary>
    public PostureStep PostureAsked { get; init; }

    /// <summary>When the rest before a pressure began; null where it is done or none is needed.</summary>
    public DateTimeOffset? RestingSince { get; init; }

    /// <summary>How often each sign could not be obtained.</summary>
    public ImmutableDictionary<VitalSign, int> CouldNotObtain { get; init; } = ImmutableDictionary<VitalSign, int>.Empty;

    /// <summary>Said about a reading that is still to come.</summary>
    public Circumstances Upcoming { get; init; } = Circumstances.Unsaid;

    /// <summary>Signs of which a guess was refused and nothing was counted since.</summary>
    public ImmutableHashSet<VitalSign> Guessed { get; init; } = [];

    /// <summary>A guess was refused that named no sign: it may have been of any.</summary>
    public bool GuessedUnnamed { get; init; }

    /// <summary>Signs for which "use the call light now" has been said.</summary>
    public ImmutableHashSet<VitalSign> DangerSaid { get; init; } = [];

    /// <summary>When the aide stopped at this resident; readings after it may have been measured before it.</summary>
    public DateTimeOffset? StoppedAt { get; init; }

    /// <summary>The reading in hand was measured before the stop.</summary>
    public bool Late { get; init; }

    public bool GuessedAt(VitalSign sign) => GuessedUnnamed || Guessed.Contains(sign);

    /// <summary>With a guess that was refused.</summary>
    /// <param name="sign">Of what; null where it was not said.</param>
    public ResidentSet WithGuess(VitalSign? sign) => sign is { } named ? this with { Guessed = Guessed.Add(named) } : this with { GuessedUnnamed = true };

    public ResidentSet WithoutGuess(VitalSign sign) => this with { Guessed = Guessed.Remove(sign), GuessedUnnamed = false };

    public int RechecksDone(VitalSign sign) => RechecksAsked.GetValueOrDefault(sign);

    public ImmutableList<string> Chain(VitalSign sign) => Chains.GetValueOrDefault(sign) ?? [];

    public bool Waits(VitalSign sign) => Waiting.Any(w => w.Sign == sign);

    /// <summary>Saved, not taken, or left open: nothing more is asked about it.</summary>
    public bool IsSettled(VitalSign sign) => (NotTaken.ContainsKey(sign) && !AskAgain.Contains(sign)) || Open.Contains(sign) || HasReading(sign);

    public bool HasReading(VitalSign sign) => Saved.Any(s => s.Sign == sign && s.Reading is not null);
}
