using System.Text.Json.Serialization;

namespace HandsFree.Core.Observations;

/// <summary>How a reading was taken: what was said about it, nothing assumed.</summary>
public sealed record Circumstances
{
    /// <summary>Nothing was said.</summary>
    public static Circumstances Unsaid { get; } = new();

    /// <summary>Where a temperature was taken.</summary>
    public TemperatureSite? Site { get; init; }

    /// <summary>The arm of a blood pressure.</summary>
    public Arm? Arm { get; init; }

    /// <summary>The position of the body.</summary>
    public BodyPosition? Position { get; init; }

    /// <summary>Room air or oxygen.</summary>
    public OxygenSupply? Oxygen { get; init; }

    /// <summary>How the oxygen reaches the resident; null on room air and where nothing was said.</summary>
    public OxygenDelivery? Delivery { get; init; }

    /// <summary>The cuff of a blood pressure, where it was not the usual adult one.</summary>
    public CuffSize? Cuff { get; init; }

    /// <summary>With which device, where it was not the round's.</summary>
    public DeviceNote? Device { get; init; }

    /// <summary>Before or after the medicine that the reading belongs to.</summary>
    public MedicineTiming? Medicine { get; init; }

    /// <summary>The pain of somebody who can't say how strong it is; nothing is said for the normal case.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Observed { get; init; }

    /// <summary>The pulse was felt as uneven; nothing is said for the normal case.</summary>
    public bool Uneven { get; init; }

    /// <summary>Read from a machine's display, not counted.</summary>
    public bool Machine { get; init; }

    /// <summary>The number that was counted, where the value was made from a count.</summary>
    public int? Counted { get; init; }

    /// <summary>Seconds of the count: 15, 30 or 60.</summary>
    public int? CountedSeconds { get; init; }

    /// <summary>Minutes since hot or cold food, drink, gum or smoke before a temperature by mouth; null where nothing was said.</summary>
    public int? MinutesSinceFoodOrDrink { get; init; }

    /// <summary>Minutes of rest before a blood pressure that was taken before the rest was over; null where it was over or is unknown.</summary>
    public int? MinutesRested { get; init; }

    /// <summary>Whole minutes that the resident had stood in a posture test; null outside of one.</summary>
    public int? MinutesStanding { get; init; }

    /// <summary>Measured before the time for which a recheck was asked: the recheck is still to be done. Nothing is said for the normal
    /// case.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool TooEarly { get; init; }

    /// <summary>The value was first said as a guess and then again without a count between (safety rule 12).</summary>
    public bool SaidAsGuessFirst { get; init; }
}
