namespace HandsFree.Core.Observations;

/// <summary>The arm on which a blood pressure was taken.</summary>
public enum Arm
{
    /// <summary>The resident's left.</summary>
    Left,

    /// <summary>The resident's right.</summary>
    Right,
}
