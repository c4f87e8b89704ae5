namespace HandsFree.Core.Observations;

/// <summary>With which device, where it was not the round's.</summary>
public enum DeviceNote
{
    /// <summary>The resident's own.</summary>
    Own,

    /// <summary>Another one than before, as a recheck may ask for.</summary>
    Other,
}
