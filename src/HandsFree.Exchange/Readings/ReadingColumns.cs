namespace HandsFree.Exchange.Readings;

/// <summary>The columns of a table of past readings: one line for each set that was taken together.</summary>
public static class ReadingColumns
{
    /// <summary>The resident's id.</summary>
    public const string Resident = "resident";

    /// <summary>Day and time of the home: 2026-03-01 08:05.</summary>
    public const string Taken = "taken";

    /// <summary>Degrees; Fahrenheit or Celsius by the number itself.</summary>
    public const string Temperature = "temperature";

    /// <summary>mouth, armpit, ear, forehead, rectum.</summary>
    public const string Site = "site";

    /// <summary>Per minute.</summary>
    public const string Pulse = "pulse";

    /// <summary>even or uneven.</summary>
    public const string Rhythm = "rhythm";

    /// <summary>Per minute.</summary>
    public const string Respirations = "respirations";

    /// <summary>Upper and lower, mmHg: 118/76.</summary>
    public const string BloodPressure = "blood pressure";

    /// <summary>left or right.</summary>
    public const string Arm = "arm";

    /// <summary>sitting, lying, standing.</summary>
    public const string Position = "position";

    /// <summary>Percent.</summary>
    public const string Oxygen = "oxygen saturation";

    /// <summary>air, or litres per minute.</summary>
    public const string Supply = "oxygen supply";

    /// <summary>In the home's unit.</summary>
    public const string Weight = "weight";

    /// <summary>0 to 10.</summary>
    public const string Pain = "pain";

    /// <summary>Parted by semicolons.</summary>
    public const string Symptoms = "symptoms";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Resident, Taken, Temperature, Site, Pulse, Rhythm, Respirations, BloodPressure, Arm, Position, Oxygen, Supply, Weight, Pain, Symptoms];

    /// <summary>Those without which there is no set.</summary>
    public static IReadOnlyList<string> Needed { get; } = [Resident, Taken];
}
