using System.Text.Json.Serialization;

namespace HandsFree.Core.Observations;

/// <summary>The third stage: a reading that was read back to the person who said it. Only here can a confirmation begin.</summary>
public sealed record ReadBack
{
    [JsonConstructor]
    private ReadBack(Understood understood, string text, DateTimeOffset at) => (Understood, Text, At) = (understood, text, at);

    /// <summary>What was understood.</summary>
    public Understood Understood { get; }

    /// <summary>What was read back, word for word.</summary>
    public string Text { get; }

    /// <summary>When it was read back.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The reading.</summary>
    [JsonIgnore]
    public Reading Reading => Understood.Reading;

    /// <summary>Reads a reading back.</summary>
    /// <param name="understood">What was understood.</param>
    /// <param name="text">The text that is spoken and shown.</param>
    /// <param name="at">When.</param>
    public static ReadBack Of(Understood understood, string text, DateTimeOffset at) => new(understood, text, at);

    /// <summary>An explicit yes after the read-back.</summary>
    /// <param name="yes">The hearing of the yes.</param>
    /// <param name="by">Who, and when measured and entered.</param>
    public Confirmed ByYes(Heard yes, Attribution by) =>
        new(this, Understood.Corrects is null ? ConfirmedHow.Yes : ConfirmedHow.CorrectedThenYes, yes, by);

    /// <summary>The value said again after the read-back.</summary>
    /// <param name="again">What was said the second time.</param>
    /// <param name="by">Who, and when measured and entered.</param>
    /// <returns>Null where the second saying is another value: nothing is confirmed then.</returns>
    public Confirmed? BySayingAgain(Understood again, Attribution by) =>
        again.Reading.Value == Reading.Value ? new Confirmed(this, ConfirmedHow.SaidAgain, again.Heard, by) : null;
}
