namespace HandsFree.Core.Meanings;

/// <summary>Words about the round and the way it is measured.</summary>
public enum RoundWord
{
    /// <summary>"Machine": pulse and pressure are read from a display from now on, in this round.</summary>
    Machine,

    /// <summary>"By hand": they are counted and listened for again.</summary>
    ByHand,

    /// <summary>"Pressure" alone: the stethoscope fills both ears, the program is silent until the value is spoken.</summary>
    Cuff,

    /// <summary>"Was resting": in bed or in the chair already; the rest before a pressure is done.</summary>
    WasResting,

    /// <summary>"Was active": the rest begins now.</summary>
    WasActive,

    /// <summary>"Private": the program names the next reading in the ear, and the bare number is enough.</summary>
    Private,

    /// <summary>"Posture test": the ordered pressures lying and standing.</summary>
    PostureTest,

    /// <summary>"Who is next".</summary>
    WhoIsNext,
}
