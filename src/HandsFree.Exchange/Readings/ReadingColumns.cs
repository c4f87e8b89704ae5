namespace HandsFree.Exchange.Readings;

/// <summary>The columns of a table of readings. A line may hold one reading or all that were taken together; a column that the program writes
/// has its unit in its name, and those without one may be written by hand.</summary>
public static class ReadingColumns
{
    /// <summary>The resident's id.</summary>
    public const string Resident = "resident";

    /// <summary>Day and time of the home, 2026-03-01 08:05, or with seconds and offset, 2026-03-01T08:05:30-06:00.</summary>
    public const string Taken = "taken";

    /// <summary>Degrees; Fahrenheit or Celsius by the number itself.</summary>
    public const string Temperature = "temperature";

    /// <summary>Degrees Fahrenheit.</summary>
    public const string Fahrenheit = "temperature (F)";

    /// <summary>Degrees Celsius.</summary>
    public const string Celsius = "temperature (C)";

    /// <summary>mouth, armpit, ear, forehead, rectum.</summary>
    public const string Site = "site";

    /// <summary>Per minute.</summary>
    public const string Pulse = "pulse";

    /// <summary>Per minute.</summary>
    public const string PulsePerMinute = "pulse (/min)";

    /// <summary>even or uneven.</summary>
    public const string Rhythm = "rhythm";

    /// <summary>Per minute.</summary>
    public const string Respirations = "respirations";

    /// <summary>Per minute.</summary>
    public const string RespirationsPerMinute = "respirations (/min)";

    /// <summary>Upper and lower, mmHg: 118/76.</summary>
    public const string BloodPressure = "blood pressure";

    /// <summary>The upper number. Two columns, because a spreadsheet takes 11/6 for a day.</summary>
    public const string Systolic = "systolic (mmHg)";

    /// <summary>The lower number.</summary>
    public const string Diastolic = "diastolic (mmHg)";

    /// <summary>left or right.</summary>
    public const string Arm = "arm";

    /// <summary>sitting, lying, standing.</summary>
    public const string Position = "position";

    /// <summary>Percent.</summary>
    public const string Oxygen = "oxygen saturation";

    /// <summary>Percent.</summary>
    public const string OxygenPercent = "oxygen saturation (%)";

    /// <summary>air, litres per minute, or "oxygen" where the flow was not said.</summary>
    public const string Supply = "oxygen supply";

    /// <summary>In the home's unit.</summary>
    public const string Weight = "weight";

    /// <summary>Pounds.</summary>
    public const string Pounds = "weight (lb)";

    /// <summary>Kilograms.</summary>
    public const string Kilograms = "weight (kg)";

    /// <summary>0 to 10.</summary>
    public const string Pain = "pain";

    /// <summary>0 to 10.</summary>
    public const string PainOfTen = "pain (of 10)";

    /// <summary>Parted by semicolons.</summary>
    public const string Symptoms = "symptoms";

    /// <summary>Why there is no value. Such a line is not read as a reading.</summary>
    public const string NotTaken = "not taken";

    /// <summary>final, amended, replaced, entered in error. The last two are not read.</summary>
    public const string Status = "status";

    /// <summary>A reading that another one took the place of.</summary>
    public const string Replaced = "replaced";

    /// <summary>A reading that should never have been.</summary>
    public const string InError = "entered in error";

    /// <summary>What a table of sets has.</summary>
    public static IReadOnlyList<string> OfSet { get; } =
    [
        Resident, Taken, Fahrenheit, Celsius, Site, PulsePerMinute, Rhythm, RespirationsPerMinute, Systolic, Diastolic, Arm, Position, OxygenPercent, Supply,
        Pounds, Kilograms, PainOfTen,
    ];

    /// <summary>What a table of single readings has besides: how each was taken, and what became of it.</summary>
    public static IReadOnlyList<string> OfReading { get; } =
    [
        .. OfSet, .. CircumstanceColumns.All.Select(c => c.Name), NotTaken, Status, "replaces", "entry", "event", "entered", "late entry", "by", "confirmed",
        "decision", "reasons",
    ];

    /// <summary>All that may be there.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Resident, Taken, Temperature, Site, Pulse, Rhythm, Respirations, BloodPressure, Arm, Position, Oxygen, Supply, Weight, Pain, Symptoms, .. OfReading.Except([Resident, Taken, Site, Rhythm, Arm, Position, Supply])];

    /// <summary>Those that a person would write.</summary>
    public static IReadOnlyList<string> ByHand { get; } =
        [Resident, Taken, Temperature, Site, Pulse, Rhythm, Respirations, BloodPressure, Arm, Position, Oxygen, Supply, Weight, Pain, Symptoms];

    /// <summary>Those without which there is no set.</summary>
    public static IReadOnlyList<string> Needed { get; } = [Resident, Taken];
}
