using HandsFree.Core.Quantities;

namespace HandsFree.Core.Rules.Scores;

/// <summary>Puts a pressure into its category; the higher class wins.</summary>
public static class PressureCategories
{
    /// <summary>The category of one pressure by ACC/AHA 2017, table 6.</summary>
    public static PressureCategory Of(BloodPressure pressure) => pressure switch
    {
        { Systolic: > 180 } or { Diastolic: > 120 } => PressureCategory.Crisis,
        { Systolic: >= 140 } or { Diastolic: >= 90 } => PressureCategory.Stage2,
        { Systolic: >= 130 } or { Diastolic: >= 80 } => PressureCategory.Stage1,
        { Systolic: >= 120 } => PressureCategory.Elevated,
        _ => PressureCategory.Normal,
    };
}
