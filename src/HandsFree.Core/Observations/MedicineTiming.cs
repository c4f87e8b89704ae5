namespace HandsFree.Core.Observations;

/// <summary>Whether a reading was taken before or after a medicine that it belongs to.</summary>
public enum MedicineTiming
{
    /// <summary>Before it was given.</summary>
    Before,

    /// <summary>After it was given.</summary>
    After,
}
