namespace HandsFree.Core.Journal;

/// <summary>What a round's dialogue was told: heard, typed, played, a timer, a lock, the journal's answer. The dialogue is a function, so
/// a round that was cut off is these events, told again. They are no part of the record: what they say is sealed once more, under a key of
/// the shift which is destroyed when the home's time is over; then this says only that something was told.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">The aide.</param>
/// <param name="At">When it happened; of speech, when it began.</param>
/// <param name="Round">The session of the round.</param>
/// <param name="Key">The name of the shift's key.</param>
/// <param name="Sealed">What was told.</param>
public sealed record DialogueTold(string Id, string Person, DateTimeOffset At, string Round, string Key, byte[] Sealed) : JournalEvent(Id, Person, At)
{
    /// <summary>The same round, id and bytes.</summary>
    public bool Equals(DialogueTold? other) => other is not null && base.Equals(other) && (Round, Key) == (other.Round, other.Key) && Sealed.AsSpan().SequenceEqual(other.Sealed);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(base.GetHashCode(), Round, Key);
}
