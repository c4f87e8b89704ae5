using System.Globalization;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Handover;

/// <summary>The sentences of the handover. Room and bed are spoken, names are not.</summary>
internal static class HandoverTexts
{
    public static string Place(Resident resident) =>
        resident.Bed is { } bed ? $"Room {resident.Room} bed {bed.ToUpperInvariant()}" : $"Room {resident.Room}";

    /// <summary>The line of one resident: the gravest thing first, then what else is not in order.</summary>
    public static string Line(HandoverEntry entry)
    {
        List<string> parts = [.. ReportParts(entry), .. RecheckParts(entry), .. MissingParts(entry)];
        return parts.Count > 0 ? Line(entry, parts) : Line(entry, [entry.Last.Count == 0 ? "nothing taken yet" : "in order"]);
    }

    public static string Reports(HandoverEntry entry) => Line(entry, ReportParts(entry));

    public static string Rechecks(HandoverEntry entry) => Line(entry, RecheckParts(entry));

    public static string Missing(HandoverEntry entry) =>
        entry.Rank == HandoverRank.NothingYet ? Line(entry) : Line(entry, MissingParts(entry));

    private static string Line(HandoverEntry entry, IEnumerable<string> parts) => $"{Place(entry.Resident)}: {string.Join("; ", parts)}.";

    private static IEnumerable<string> ReportParts(HandoverEntry entry) => entry.Reports.Select(r => Report(r, entry));

    private static IEnumerable<string> RecheckParts(HandoverEntry entry) =>
        entry.Rechecks.Select(r => $"recheck waits, {SignNames.Of(r.Sign)}, since {r.At.ToString("H:mm", CultureInfo.InvariantCulture)}");

    private static IEnumerable<string> MissingParts(HandoverEntry entry) =>
        NotTaken(entry).Concat(entry.LeftOpen.Count > 0 ? [$"left open, {Signs(entry.LeftOpen.Select(o => o.Sign))}"] : []);

    /// <summary>What is not in order, then the last value of each sign with its time and the usual value.</summary>
    public static string Room(HandoverEntry entry) =>
        entry.Rank is HandoverRank.InOrder or HandoverRank.NothingYet
            ? LastValues(entry)
            : Sentence.Join(Line(entry), entry.Last.Count == 0 ? "" : $"Last values: {Values(entry)}.");

    /// <summary>The last value of each sign with its time and the usual value.</summary>
    public static string LastValues(HandoverEntry entry) =>
        $"{Place(entry.Resident)}: {(entry.Last.Count == 0 ? "nothing taken yet" : Values(entry))}.";

    private static string Values(HandoverEntry entry) =>
        string.Join("; ", entry.Last.OrderBy(l => l.Key).Select(l => LastValue(l.Value, entry.Resident) + Corrected(l.Value, entry)));

    public static string LastValue(ReadingRecorded reading, Resident resident) =>
        $"{Said(reading)} at {Time(reading)}{Usual(reading.Confirmed.Reading.Value.Sign, resident)}";

    private static string Corrected(ReadingRecorded reading, HandoverEntry entry) => entry.CorrectedFrom.TryGetValue(reading.Id, out var was)
        ? $", corrected from {ReadBackTexts.Value(was.Confirmed.Reading.Value)}"
        : "";

    public static string Said(ReadingRecorded reading) => ReadBackTexts.Of(reading.Confirmed.Reading);

    private static string Time(ReadingRecorded reading) =>
        (reading.Confirmed.By.Late ? "about " : "") + reading.Confirmed.By.MeasuredAt.ToString("H:mm", CultureInfo.InvariantCulture);

    private static string Report(ReportOpened report, HandoverEntry entry)
    {
        string when = report.Urgency == ReportUrgency.Now ? "report now" : "report this shift";
        List<string> values = [.. entry.Readings.Where(r => report.Readings.Contains(r.Id))
            .Select((r, i) => i == 0 ? Said(r) : $"then {ReadBackTexts.Value(r.Confirmed.Reading.Value)}")];
        string what = values.Count > 0 ? string.Join(", ", values) : report.Situation;
        return $"{when}, {what}{(report.Sign is { } sign ? Usual(sign, entry.Resident) : "")}{Notes(report, entry)}";
    }

    private static string Notes(ReportOpened report, HandoverEntry entry) =>
        string.Concat(entry.Notes.Where(n => n.Report == report.Id).Select(n => $", {n.Text}"));

    private static IEnumerable<string> NotTaken(HandoverEntry entry) =>
        entry.NotTaken.GroupBy(n => n.Reason).Select(g =>
            $"{(g.Any(n => n.Sign is null) ? "all that was open" : Signs(g.Select(n => n.Sign).OfType<VitalSign>()))}, {NotTakenTexts.Reason(g.Key)}");

    private static string Signs(IEnumerable<VitalSign> signs) => Sentence.List([.. signs.Distinct().Select(SignNames.Of)]);

    private static string Usual(VitalSign sign, Resident resident)
    {
        decimal? Median(LimitedValue value) => resident.UsualValues.FirstOrDefault(u => u.Value == value)?.Median;
        string? usual = sign switch
        {
            VitalSign.BloodPressure => Median(LimitedValue.Systolic) is { } upper && Median(LimitedValue.Diastolic) is { } lower
                ? $"{DigitWords.Of(upper)} over {DigitWords.Of(lower)}"
                : null,
            VitalSign.Temperature => Median(LimitedValue.TemperatureFahrenheit) is { } f ? $"{DigitWords.Of(f)} Fahrenheit" : null,
            VitalSign.Pulse => Number(Median(LimitedValue.Pulse)),
            VitalSign.Respirations => Number(Median(LimitedValue.Respirations)),
            VitalSign.OxygenSaturation => Number(Median(LimitedValue.OxygenSaturation)),
            VitalSign.Weight => Median(LimitedValue.WeightPounds) is { } lb ? $"{DigitWords.Of(lb)} pounds" : null,
            VitalSign.Pain => Number(Median(LimitedValue.Pain)),
            _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
        };
        return usual is null ? "" : $", usual {usual}";
    }

    private static string? Number(decimal? median) => median is { } m ? DigitWords.Of(m) : null;
}
