using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>What can happen to the dialogue. Everything comes in here, time included.</summary>
/// <param name="At">When it happened.</param>
public abstract record DialogueEvent(DateTimeOffset At)
{
    /// <summary>Something was understood: spoken, or typed with the same meaning.</summary>
    /// <param name="At">When the speech began.</param>
    /// <param name="Meaning">What it means.</param>
    /// <param name="Words">What was understood, as spoken words; what was typed, where typed.</param>
    public sealed record Utterance(DateTimeOffset At, Meaning Meaning, string Words) : DialogueEvent(At)
    {
        /// <summary>Probability of the meaning, 0 to 1; 1 where typed.</summary>
        public double Probability { get; init; } = 1;

        /// <summary>Difference of the log posteriors to the next meaning (natural logarithm), 0 or more; null without one.</summary>
        public double? Margin { get; init; }

        /// <summary>All meanings that were possible, the best among them, likeliest first, each once; what the probabilities lack to 1 is "none
        /// of these". Empty where they are not known, and where typed.</summary>
        public IReadOnlyList<Possible<Meaning>> Alternatives { get; init; } = [];

        /// <summary>It was one of the meanings and not "none of these", but the engine does not say which one; false where typed.</summary>
        public bool Doubtful { get; init; }

        /// <summary>What a meaning that the engine's search left out can have as probability at most, 0 to 1.</summary>
        public double Unfound { get; init; }

        /// <summary>The next meaning, or null.</summary>
        public Meaning? RunnerUp { get; init; }

        /// <summary>The next meaning's words, or null.</summary>
        public string? RunnerUpWords { get; init; }

        /// <summary>Level of the speech in dB full scale, 0 or less; null where unknown.</summary>
        public double? LevelDecibels { get; init; }

        /// <summary>By keys: never doubtful, never too quiet.</summary>
        public bool Typed { get; init; }
    }

    /// <summary>There was speech, and it is nothing that the state listens for.</summary>
    /// <param name="At">When the speech began.</param>
    public sealed record NotAReading(DateTimeOffset At) : DialogueEvent(At)
    {
        /// <summary>By keys: it was meant for the program.</summary>
        public bool Typed { get; init; }
    }

    /// <summary>The round was cut off, and goes on.</summary>
    /// <param name="At">When.</param>
    /// <param name="Since">When it was cut off: the last thing that is known to have happened.</param>
    public sealed record Resumed(DateTimeOffset At, DateTimeOffset Since) : DialogueEvent(At);

    /// <summary>An answer was awaited and nothing came.</summary>
    /// <param name="At">When the waiting ended.</param>
    public sealed record NothingHeard(DateTimeOffset At) : DialogueEvent(At);

    /// <summary>The beginning of a reading, and no more.</summary>
    /// <param name="At">When the speech began.</param>
    public sealed record PartOfAReading(DateTimeOffset At) : DialogueEvent(At);

    /// <summary>A timer that the dialogue started has run out.</summary>
    /// <param name="At">When.</param>
    /// <param name="Name">The name that <see cref="Effect.StartTimer"/> gave it.</param>
    public sealed record TimerElapsed(DateTimeOffset At, string Name) : DialogueEvent(At);

    /// <summary>All that was to be said has been played.</summary>
    /// <param name="At">When the last sample was played.</param>
    public sealed record Played(DateTimeOffset At) : DialogueEvent(At);

    /// <summary>A batch is in the journal and flushed to the disk.</summary>
    /// <param name="At">When.</param>
    /// <param name="Batch">The name that <see cref="Effect.Record"/> gave it.</param>
    /// <param name="Sequence">The sequence number of its last event.</param>
    public sealed record Saved(DateTimeOffset At, string Batch, long Sequence) : DialogueEvent(At);

    /// <summary>A batch could not be written.</summary>
    /// <param name="At">When.</param>
    /// <param name="Batch">The name that <see cref="Effect.Record"/> gave it.</param>
    /// <param name="Why">For the log.</param>
    public sealed record SaveFailed(DateTimeOffset At, string Batch, string Why) : DialogueEvent(At);

    /// <summary>Nothing was accepted for the home's time: the session is to be locked.</summary>
    /// <param name="At">When.</param>
    public sealed record LockDue(DateTimeOffset At) : DialogueEvent(At);

    /// <summary>Her PIN, or the digits of her choice, unlocked the session.</summary>
    /// <param name="At">When.</param>
    /// <param name="By">With what.</param>
    public sealed record Unlocked(DateTimeOffset At, UnlockedBy By) : DialogueEvent(At);

    /// <summary>What was typed or said did not unlock the session.</summary>
    /// <param name="At">When.</param>
    /// <param name="Wait">How long until another try counts; zero where at once.</param>
    public sealed record UnlockRefused(DateTimeOffset At, TimeSpan Wait) : DialogueEvent(At);
}
