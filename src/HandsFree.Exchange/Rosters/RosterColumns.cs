namespace HandsFree.Exchange.Rosters;

/// <summary>The columns of a roster table. A column that a file does not have leaves what the roster has; an empty cell takes it away.</summary>
public static class RosterColumns
{
    /// <summary>The home's own number for the resident; stable, says nothing outside.</summary>
    public const string Id = "id";

    /// <summary>The name as it is spoken in the aide's ear.</summary>
    public const string Name = "name";

    /// <summary>The name on band or photo, where it is another.</summary>
    public const string OfficialName = "official name";

    /// <summary>1 to 999.</summary>
    public const string Room = "room";

    /// <summary>a to d; empty in a room of one bed.</summary>
    public const string Bed = "bed";

    /// <summary>The unit as the home calls it; empty where it has one alone.</summary>
    public const string Unit = "unit";

    /// <summary>Year, month and day: 1931-03-09.</summary>
    public const string Born = "born";

    /// <summary>The number on band or photo, 3 to 12 digits.</summary>
    public const string BandNumber = "band number";

    /// <summary>"pulse 50-120 by Dr Example on 2026-02-01; weight -180 by Dr Example on 2026-02-01 until 2026-03-01 07:00".</summary>
    public const string OrderedLimits = "ordered limits";

    /// <summary>"left fistula; right mastectomy".</summary>
    public const string Arms = "arms not to be used";

    /// <summary>"pulse 72; temperature 97.8 mouth".</summary>
    public const string UsualValues = "usual values";

    /// <summary>Litres per minute, "air", or "unsaid" for oxygen of unknown flow.</summary>
    public const string Oxygen = "oxygen";

    /// <summary>The circumference of the upper arm in centimetres.</summary>
    public const string ArmCentimetres = "arm cm";

    /// <summary>"pacemaker; own thermometer".</summary>
    public const string Devices = "devices";

    /// <summary>"heart failure".</summary>
    public const string Conditions = "conditions";

    /// <summary>"temperature every shift; weight monthly 1; blood pressure weekly monday by Dr Example".</summary>
    public const string Schedule = "schedule";

    /// <summary>"antibiotic 2026-03-01 to 2026-03-08; plan 2026-03-02".</summary>
    public const string UsualFrozen = "usual frozen";

    /// <summary>"contact", "droplet".</summary>
    public const string Isolation = "isolation";

    /// <summary>"by Dr Example on 2026-02-01".</summary>
    public const string PostureTest = "posture test";

    /// <summary>"hospital 2026-03-01", "family 2026-03-01 to 2026-03-05".</summary>
    public const string Away = "away";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        Id, Name, OfficialName, Room, Bed, Unit, Born, BandNumber, OrderedLimits, Arms, UsualValues, Oxygen, ArmCentimetres, Devices, Conditions, Schedule,
        UsualFrozen, Isolation, PostureTest, Away,
    ];

    /// <summary>Those without which there is no resident.</summary>
    public static IReadOnlyList<string> Needed { get; } = [Id, Name, Room, Born];
}
