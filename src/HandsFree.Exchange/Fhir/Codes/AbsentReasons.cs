using HandsFree.Core.Meanings;

namespace HandsFree.Exchange.Fhir.Codes;

/// <summary>Why a reading was not taken, as R4 codes it (HL7 data-absent-reason; which of our reasons is which is a choice of this program).</summary>
public static class AbsentReasons
{
    /// <summary>Each reason with the code, its name, and the words that go with it.</summary>
    public static IReadOnlyDictionary<NotTakenReason, (string Code, string Display, string Text)> All { get; } = new Dictionary<NotTakenReason, (string, string, string)>
    {
        [NotTakenReason.Unsaid] = ("unknown", "Unknown", "not taken; no reason was said"),
        [NotTakenReason.Refused] = ("asked-declined", "Asked But Declined", "refused"),
        [NotTakenReason.Declined] = ("asked-declined", "Asked But Declined", "declined"),
        [NotTakenReason.Asleep] = ("not-performed", "Not Performed", "asleep"),
        [NotTakenReason.NotInRoom] = ("not-performed", "Not Performed", "not in the room"),
        [NotTakenReason.Isolated] = ("temp-unknown", "Temporarily Unknown", "isolated; taken later"),
        [NotTakenReason.NoEquipment] = ("not-performed", "Not Performed", "no equipment"),
        [NotTakenReason.CouldNotObtain] = ("not-performed", "Not Performed", "tried and could not obtain"),
    };
}
