namespace HandsFree.Core.Quantities;

/// <summary>The unit in which a temperature was said; a value is never converted to be stored.</summary>
public enum TemperatureUnit
{
    /// <summary>UCUM [degF].</summary>
    Fahrenheit,

    /// <summary>UCUM Cel.</summary>
    Celsius,
}
