using HandsFree.Core.Handover;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>What the home and the engine decide about the dialogue.</summary>
public sealed record DialogueSettings
{
    /// <summary>A margin below this is doubtful: the program does not choose and asks for the digits. Wrong values in noise had
    /// margins below 0.7 (measured with an engine that is gone).</summary>
    public double DoubtMargin { get; init; } = 0.7;

    /// <summary>A meaning that the engine called doubtful is sure from this probability, once alternatives that are one answer, or a second
    /// hearing, are counted in. Not below the least probability of any engine.</summary>
    public double SureFrom { get; init; } = 0.85;

    /// <summary>With a margin below this the next meaning counts for the strength of the confirmation too, and a command that leaves the
    /// resident or the round is not obeyed.</summary>
    public double CautionMargin { get; init; } = 2.5;

    /// <summary>Every value is said digit by digit: for an engine that can't be trusted with number words.</summary>
    public bool DigitByDigit { get; init; }

    /// <summary>A yes that is quieter than the reading by more than this is asked again, dB.</summary>
    public double QuieterBy { get; init; } = 12;

    /// <summary>A pause longer than this, and identity is asked again.</summary>
    public TimeSpan LongestPause { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>The unit of a bare weight.</summary>
    public WeightUnit WeightUnit { get; init; } = WeightUnit.Pounds;

    /// <summary>When the shift began, for the handover by voice; null for all that the journal holds.</summary>
    public DateTimeOffset? ShiftBegan { get; init; }

    /// <summary>When the home's shifts begin, for "since the last shift".</summary>
    public ShiftClock Shifts { get; init; } = new(TimeZoneInfo.Utc, [new TimeOnly(7, 0), new TimeOnly(15, 0), new TimeOnly(23, 0)]);

    /// <summary>After what time reports and rechecks are overdue.</summary>
    public Overdue Overdue { get; init; } = Overdue.Default;

    /// <summary>Seconds of a pulse count: 30, or 60 where the home wants it.</summary>
    public int PulseCountSeconds { get; init; } = 30;

    /// <summary>Breaths may be counted for 30 seconds where it is asked for; else always 60 (safety 2). 15 never.</summary>
    public bool BreathsInThirtySeconds { get; init; }

    /// <summary>Rest before a blood pressure, from when the resident was last active (AHA 2005, clinical-rules 5.1).</summary>
    public TimeSpan RestBeforePressure { get; init; } = TimeSpan.FromMinutes(5);

    /// <summary>What is taken from everyone in this round, in the order in which the program asks.</summary>
    public IReadOnlyList<VitalSign> Due { get; init; } =
        [VitalSign.Temperature, VitalSign.Pulse, VitalSign.Respirations, VitalSign.BloodPressure, VitalSign.OxygenSaturation];

    /// <summary>A locked session is unlocked by spoken digits of her choice too, not only by PIN.</summary>
    public bool UnlocksBySpokenDigits { get; init; }

    /// <summary>Sample phrases of a grammar, for "options" and the third prompt; from the grammar tree.</summary>
    public Func<Listening, IReadOnlyList<string>> SamplePhrases { get; init; } = static _ => [];
}
