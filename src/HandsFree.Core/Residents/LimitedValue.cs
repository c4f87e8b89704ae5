namespace HandsFree.Core.Residents;

/// <summary>The single numbers that a limit can stand on.</summary>
public enum LimitedValue
{
    /// <summary>Body temperature, degrees Fahrenheit.</summary>
    TemperatureFahrenheit,

    /// <summary>Heart rate, per minute.</summary>
    Pulse,

    /// <summary>Respiratory rate, per minute.</summary>
    Respirations,

    /// <summary>Systolic pressure, mm[Hg].</summary>
    Systolic,

    /// <summary>Diastolic pressure, mm[Hg].</summary>
    Diastolic,

    /// <summary>Oxygen saturation, percent.</summary>
    OxygenSaturation,

    /// <summary>Body weight, pounds.</summary>
    WeightPounds,

    /// <summary>Pain, of ten.</summary>
    Pain,
}
