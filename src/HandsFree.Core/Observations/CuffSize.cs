namespace HandsFree.Core.Observations;

/// <summary>A blood pressure cuff other than the usual adult one.</summary>
public enum CuffSize
{
    /// <summary>Small adult.</summary>
    Small,

    /// <summary>Large adult.</summary>
    Large,

    /// <summary>For the thigh.</summary>
    Thigh,
}
