namespace HandsFree.Core.Meanings;

/// <summary>Why a reading was not taken.</summary>
public enum NotTakenReason
{
    /// <summary>No reason was said.</summary>
    Unsaid,

    /// <summary>"Refused".</summary>
    Refused,

    /// <summary>"Declined": the same, in a word that room mates need not mind.</summary>
    Declined,

    /// <summary>"Asleep".</summary>
    Asleep,

    /// <summary>"Not in the room", "not available".</summary>
    NotInRoom,

    /// <summary>"Isolated": taken later, with the kit of the isolation room.</summary>
    Isolated,

    /// <summary>"No equipment".</summary>
    NoEquipment,

    /// <summary>"Could not obtain": a machine's error, no pulse felt. An outcome of its own; twice is reported now.</summary>
    CouldNotObtain,
}
