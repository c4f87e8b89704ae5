using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Meanings;

/// <summary>What something that was said, or typed, can mean. Every way through a grammar ends in one of these.</summary>
public abstract record Meaning
{
    private Meaning()
    {
    }

    /// <summary>A whole reading: what, how much, and what was said about the way it was taken.</summary>
    /// <param name="Reading">The reading.</param>
    public sealed record ReadingSaid(Reading Reading) : Meaning;

    /// <summary>A number alone, in a state that knows what it is a number of.</summary>
    /// <param name="Number">The number, or the pair of a blood pressure.</param>
    public sealed record ValueAlone(SpokenNumber Number) : Meaning;

    /// <summary>Yes or no.</summary>
    /// <param name="Yes">True for yes.</param>
    public sealed record Answer(bool Yes) : Meaning;

    /// <summary>"No, eighty-two": the refusal and the new number in one breath.</summary>
    /// <param name="Number">The new number.</param>
    public sealed record Correction(SpokenNumber Number) : Meaning;

    /// <summary>What was counted while the tones ran.</summary>
    /// <param name="Counted">Beats or breaths, 0 or more.</param>
    public sealed record CountSaid(int Counted) : Meaning;

    /// <summary>Something about the way a reading was taken, said alone.</summary>
    /// <param name="How">Only what was said is set.</param>
    public sealed record Qualifier(Circumstances How) : Meaning;

    /// <summary>A word about counting.</summary>
    /// <param name="Word">Which.</param>
    public sealed record Counting(CountWord Word) : Meaning;

    /// <summary>A word about the round and the way it is measured.</summary>
    /// <param name="Word">Which.</param>
    public sealed record AboutRound(RoundWord Word) : Meaning;

    /// <summary>A reading was not taken.</summary>
    /// <param name="Reason">Why.</param>
    /// <param name="Sign">Which one, where it was said.</param>
    public sealed record NotTaken(NotTakenReason Reason, VitalSign? Sign = null) : Meaning;

    /// <summary>A guess or a range: recognised as such, and never a value.</summary>
    /// <param name="Sign">Of what, where it was said.</param>
    public sealed record Hedge(VitalSign? Sign = null) : Meaning;

    /// <summary>A command.</summary>
    /// <param name="Word">Which.</param>
    public sealed record Command(CommandWord Word) : Meaning;

    /// <summary>Room and bed: a place, not an identifier.</summary>
    /// <param name="Room">1 to 999.</param>
    /// <param name="Bed">a to d, or null.</param>
    public sealed record Place(int Room, string? Bed) : Meaning
    {
        /// <summary>The birthday, where it was said in one breath with the place.</summary>
        public BirthDate? Born { get; init; }
    }

    /// <summary>The bed alone, where a room has several.</summary>
    /// <param name="Bed">a to d.</param>
    public sealed record BedAlone(string Bed) : Meaning;

    /// <summary>A date of birth, or its day and month alone.</summary>
    /// <param name="Month">1 to 12.</param>
    /// <param name="Day">1 to 31.</param>
    /// <param name="Year">Null where only day and month were said.</param>
    public sealed record BirthDate(int Month, int Day, int? Year) : Meaning;

    /// <summary>The number on band or photo.</summary>
    /// <param name="Number">Digits only.</param>
    public sealed record BandNumber(string Number) : Meaning;

    /// <summary>A question at the change of shift.</summary>
    /// <param name="Kind">Which question.</param>
    /// <param name="Room">The room asked for, with <see cref="QueryKind.Room"/> and <see cref="QueryKind.LastValue"/>.</param>
    public sealed record Query(QueryKind Kind, int? Room) : Meaning
    {
        /// <summary>The bed, a to d, where it was said with the room.</summary>
        public string? Bed { get; init; }

        /// <summary>The vital sign, with <see cref="QueryKind.LastValue"/> alone.</summary>
        public VitalSign? Sign { get; init; }

        /// <summary>From when on, with <see cref="QueryKind.Since"/> alone.</summary>
        public SinceSaid? Since { get; init; }

        /// <summary>Who was told, with <see cref="QueryKind.Told"/> alone.</summary>
        public Told? Whom { get; init; }
    }

    /// <summary>"I'm worried about …": a report without a number.</summary>
    public sealed record Worried : Meaning;

    /// <summary>Understood, but no such value can be: kept so that the number can be repeated to the person who said it.</summary>
    /// <param name="Sign">Which vital sign, where it was said.</param>
    /// <param name="Number">The number that was said.</param>
    /// <param name="Why">What is wrong with it, in words.</param>
    public sealed record NotPossible(VitalSign? Sign, SpokenNumber Number, string Why) : Meaning;
}
