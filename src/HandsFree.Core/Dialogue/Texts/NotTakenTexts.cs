using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>What is read back where a reading was not taken. No text holds a command word ("no equipment" would hold "no").</summary>
internal static class NotTakenTexts
{
    public static string ReadBack(VitalSign? sign, NotTakenReason reason) =>
        $"{(sign is { } one ? SignNames.Of(one) : "all that is open")}, {Reason(reason)}";

    public static string Reason(NotTakenReason reason) => reason switch
    {
        NotTakenReason.Unsaid => "not taken",
        NotTakenReason.Refused => "refused",
        NotTakenReason.Declined => "declined",
        NotTakenReason.Asleep => "asleep",
        NotTakenReason.NotInRoom => "not in the room",
        NotTakenReason.Isolated => "isolated",
        NotTakenReason.NoEquipment => "equipment missing",
        NotTakenReason.CouldNotObtain => "could not obtain",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "no such reason"),
    };
}
