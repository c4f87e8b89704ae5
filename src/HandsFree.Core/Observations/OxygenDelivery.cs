namespace HandsFree.Core.Observations;

/// <summary>How oxygen reaches the resident.</summary>
public enum OxygenDelivery
{
    /// <summary>Two short tubes in the nose.</summary>
    NasalCannula,

    /// <summary>Any mask.</summary>
    Mask,
}
