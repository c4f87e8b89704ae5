using System.Globalization;
using System.Text.Json;
using HandsFree.App.Demo.Script;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.App.Demo.Outcome;

/// <summary>An entry of the journal, or one that is expected, as one line: two that say the same are the same line.</summary>
internal static class EntryLine
{
    /// <summary>What is expected.</summary>
    public static string Of(ExpectedEntry entry) => Join(
        entry.Resident, entry.Kind, entry.Sign, Value(entry.Value), entry.Qualifiers, entry.Reason ?? entry.Urgency);

    /// <summary>What the journal holds; null for entries about the round and the way to a value (begun, identified, attempts).</summary>
    public static string? Of(JournalEvent entry) => entry switch
    {
        ReadingRecorded e => Join(
            e.Resident, "reading", Sign(e.Confirmed.Reading.Value.Sign), Value(e.Confirmed.Reading.Value), Qualifiers(e), null),
        NotTakenRecorded e => Join(e.Resident, "not taken", e.Sign is { } sign ? Sign(sign) : null, "", [], Reason(e.Reason)),
        ReportOpened e => Join(
            e.Resident, "report", e.Sign is { } sign ? Sign(sign) : null, "", [], e.Urgency == ReportUrgency.Now ? "now" : "this shift"),
        RecheckAsked e => Join(e.Resident, "recheck asked", Sign(e.Sign), "", [], null),
        LeftOpen e => Join(e.Resident, "left open", Sign(e.Sign), "", [], null),
        EnteredInError e => Join(e.Resident, "entered in error", null, e.Event, [], e.Reason),
        ReportAcknowledged e => Join(e.Person, "report acknowledged", null, e.Report, [], null),
        RoundStarted or RoundEnded or RoundResumed or DialogueTold or ResidentIdentified or IdentificationFailed or AttemptDiscarded
            or ReadingAmended or ReportNoted or PersonAdded or PersonRemoved or PinChanged or RecoveryKeyMade or RecordViewed or JournalRestored or RulesKept
            or RosterKept or SpokenDigitsSet or AudioKept or AudioDeleted or ReportTold or ReportClosed or PlanMade or HomeFileKept or OpeningFailed or EmergencyKeyMade or EmergencyOpened or JournalAccepted or DeviceRetired or PlanWithdrawn => null,
        _ => $"{entry.GetType().Name} {entry.Id}",
    };

    private static string Join(string resident, string kind, string? sign, string value, IReadOnlyList<string> qualifiers, string? why) =>
        string.Join(", ", new[] { $"resident {resident}: {kind}", sign ?? "", value }.Concat(qualifiers.Order(StringComparer.Ordinal))
            .Append(why ?? "").Where(part => part.Length > 0));

    private static string Sign(VitalSign sign) => RosterWords.Signs.First(s => s.Value == sign).Key;

    private static string Value(JsonElement? value) => value switch
    {
        null => "",
        { ValueKind: JsonValueKind.Array } pair => string.Join("/", pair.EnumerateArray().Select(n => Number(n.GetDecimal()))),
        { } number => Number(number.GetDecimal()),
    };

    private static string Value(Quantity value) => value switch
    {
        HeartRate v => Number(v.PerMinute),
        RespiratoryRate v => Number(v.PerMinute),
        OxygenSaturation v => Number(v.Percent),
        PainScore v => Number(v.OfTen),
        BloodPressure v => $"{Number(v.Systolic)}/{Number(v.Diastolic)}",
        BodyTemperature v => Number(v.Degrees) + (v.Unit == TemperatureUnit.Celsius ? " Celsius" : ""),
        BodyWeight v => Number(v.Value) + (v.Unit == WeightUnit.Kilograms ? " kilograms" : ""),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    private static string Number(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static List<string> Qualifiers(ReadingRecorded entry)
    {
        Circumstances how = entry.Confirmed.Reading.How;
        List<string> found = [];
        found.AddRange(how.Site is { } site ? [RosterWords.Sites.First(s => s.Value == site).Key] : []);
        found.AddRange(how.Arm is { } arm ? [arm == Arm.Left ? "left arm" : "right arm"] : []);
        found.AddRange(how.Position is { } position ? [position.ToString().ToLowerInvariant()] : []);
        found.AddRange(how.Oxygen is { } oxygen ? [oxygen.IsRoomAir ? "room air" : $"oxygen {oxygen.LitresPerMinute}"] : []);
        found.AddRange(how.Delivery is { } delivery ? [delivery == OxygenDelivery.Mask ? "mask" : "nasal cannula"] : []);
        found.AddRange(how.MinutesStanding is { } minutes ? [minutes == 1 ? "after 1 minute" : $"after {minutes} minutes"] : []);
        found.AddRange(how.Cuff is { } cuff ? [$"{cuff.ToString().ToLowerInvariant()} cuff"] : []);
        found.AddRange(how.Device is { } device ? [$"{device.ToString().ToLowerInvariant()} device"] : []);
        found.AddRange(how.Medicine is { } medicine ? [$"{medicine.ToString().ToLowerInvariant()} medicine"] : []);
        found.AddRange(how.Observed ? ["observed"] : []);
        found.AddRange(how.Uneven ? ["uneven"] : []);
        found.AddRange(how.Machine ? ["machine"] : []);
        found.AddRange(how is { Counted: { } counted, CountedSeconds: { } seconds } ? [$"counted {counted} in {seconds} seconds"] : []);
        found.AddRange(how.TooEarly ? ["too early"] : []);
        found.AddRange(how.SaidAsGuessFirst ? ["said as a guess first"] : []);
        found.AddRange(entry.IsRecheck ? ["recheck"] : []);
        found.AddRange(entry.Amends is not null ? ["amended"] : []);
        return found;
    }

    private static string Reason(NotTakenReason reason) => reason switch
    {
        NotTakenReason.Unsaid => "not taken",
        NotTakenReason.NotInRoom => "not in the room",
        NotTakenReason.NoEquipment => "no equipment",
        NotTakenReason.CouldNotObtain => "could not obtain",
        _ => reason.ToString().ToLowerInvariant(),
    };
}
