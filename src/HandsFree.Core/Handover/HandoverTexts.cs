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
    private const string NothingYet = "nothing taken yet";

    public static string Place(Resident resident) =>
        resident.Room == 0 ? $"Resident {resident.Id}, no longer on the roster" :
        resident.Bed is { } bed ? $"Room {resident.Room} bed {bed.ToUpperInvariant()}" : $"Room {resident.Room}";

    /// <summary>The line of one resident: the gravest thing first, then what else is not in order.</summary>
    public static string Line(HandoverEntry entry) => Line(entry, Parts(entry));

    private static List<string> Parts(HandoverEntry entry)
    {
        List<string> parts = [.. ReportParts(entry), .. RecheckParts(entry), .. ReportTexts.Acknowledged(entry), .. MissingParts(entry)];
        return parts.Count > 0 ? parts : [InOrder(entry)];
    }

    private static string InOrder(HandoverEntry entry) => entry switch
    {
        { NotVisited: true } => NothingYet,
        { Last.Count: > 0 } => "in order",
        { Away: { } away } => $"away, {away.Why}",
        _ => "nothing is due",
    };

    private static string Place(Move move) => move.FromBed is { } bed ? $"room {move.FromRoom} bed {bed.ToUpperInvariant()}" : $"room {move.FromRoom}";

    public static string Reports(HandoverEntry entry) => Line(entry, ReportParts(entry));

    /// <summary>Some of the reports of a resident.</summary>
    public static string Reports(HandoverEntry entry, IEnumerable<Report> reports) => Line(entry, reports.Select(r => ReportTexts.Of(r, entry)));

    public static string Rechecks(HandoverEntry entry) => Line(entry, RecheckParts(entry));

    public static string Missing(HandoverEntry entry) => Line(entry, entry.NotVisited ? [NothingYet] : MissingParts(entry));

    /// <summary>What is left to do of a resident: rechecks, and what is missing.</summary>
    public static string Left(HandoverEntry entry) => Line(entry, entry.NotVisited ? [.. RecheckParts(entry), NothingYet] : [.. RecheckParts(entry), .. MissingParts(entry)]);

    private static string Line(HandoverEntry entry, IEnumerable<string> parts) => $"{Place(entry.Resident)}: {string.Join("; ", parts)}.";

    /// <summary>What is new of her, then her line.</summary>
    public static string NewOrChanged(HandoverEntry entry) => !entry.IsNew ? Line(entry)
        : Line(entry, [$"new here{(entry.Resident.Moved is { } move ? $", from {Place(move)}" : "")}", .. Parts(entry)]);

    private static IEnumerable<string> ReportParts(HandoverEntry entry) => entry.Reports.Select(r => ReportTexts.Of(r, entry));

    private static IEnumerable<string> RecheckParts(HandoverEntry entry) =>
        entry.Rechecks.Select(r => $"recheck waits, {Doubted(r, entry)}, since {Moment(r.At, entry.Now)}");

    // Who takes over must know the value, where no report of it is open yet.
    private static string Doubted(RecheckAsked recheck, HandoverEntry entry) =>
        !entry.Reports.Any(r => r.Readings.Contains(recheck.Reading)) && entry.Readings.FirstOrDefault(r => r.Id == recheck.Reading) is { } reading
            ? Said(reading)
            : SignNames.Of(recheck.Sign);

    private static IEnumerable<string> MissingParts(HandoverEntry entry) =>
    [
        .. NotTaken(entry),
        .. entry.LeftOpen.Count > 0 ? [$"left open, {Signs(entry.LeftOpen.Select(o => o.Sign))}"] : Array.Empty<string>(),
        .. entry.IsBegun ? [$"not taken yet, {Signs(entry.StillDue)}"] : Array.Empty<string>(),
    ];

    /// <summary>What is not in order, then the last value of each sign with its time and the usual value.</summary>
    public static string Room(HandoverEntry entry) =>
        entry.Rank is HandoverRank.InOrder or HandoverRank.NothingYet
            ? LastValues(entry)
            : Sentence.Join(Line(entry), entry.Last.Count == 0 ? "" : $"Last values: {Values(entry)}.");

    /// <summary>The last value of each sign with its time and the usual value.</summary>
    public static string LastValues(HandoverEntry entry) =>
        $"{Place(entry.Resident)}: {(entry.Last.Count == 0 ? InOrder(entry) : Values(entry))}.";

    private static string Values(HandoverEntry entry) =>
        string.Join("; ", entry.Last.OrderBy(l => l.Key).Select(l => LastValue(l.Value, entry.Resident) + Corrected(l.Value, entry)));

    public static string LastValue(ReadingRecorded reading, Resident resident) =>
        $"{Said(reading)} at {Time(reading)}{Usual(reading.Confirmed.Reading.Value.Sign, resident)}";

    private static string Corrected(ReadingRecorded reading, HandoverEntry entry) => entry.CorrectedFrom.TryGetValue(reading.Id, out var was)
        ? $", corrected from {ReadBackTexts.Value(was.Confirmed.Reading.Value)}"
        : "";

    public static string Said(ReadingRecorded reading) => ReadBackTexts.Of(reading.Confirmed.Reading);

    public static string Time(ReadingRecorded reading) => (reading.Confirmed.By.Late ? "about " : "") + Time(reading.Confirmed.By.MeasuredAt);

    public static string Time(DateTimeOffset at) => at.ToString("H:mm", CultureInfo.InvariantCulture);

    /// <summary>The time alone where it is of the day that is spoken of, else with the day before it.</summary>
    public static string Moment(DateTimeOffset at, DateTimeOffset? now) => now is not { } here || here.ToOffset(at.Offset).Date == at.Date
        ? Time(at)
        : at.ToString(here - at < TimeSpan.FromDays(6) ? "dddd H:mm" : "MMMM d H:mm", CultureInfo.InvariantCulture);

    /// <summary>The last value of one sign; where it was not taken since the list began, that, and the last one before.</summary>
    public static string LastValue(HandoverEntry entry, VitalSign sign, HandoverTime time) =>
        entry.Last.TryGetValue(sign, out ReadingRecorded? last) ? $"{Place(entry.Resident)}: {LastValue(last, entry.Resident)}{Corrected(last, entry)}."
        : entry.LastEver.TryGetValue(sign, out ReadingRecorded? before)
            ? $"{Place(entry.Resident)}: {SignNames.Of(sign)} not taken since {Moment(time.Since ?? before.At, time.Now)}; before, {Said(before)}, {Moment(before.Confirmed.By.MeasuredAt, time.Now)}{Usual(sign, entry.Resident)}."
            : $"{Place(entry.Resident)}: {SignNames.Of(sign)} was not taken.";

    /// <summary>What the reports rest on, with times, and who knows; then the last values.</summary>
    public static string Details(HandoverEntry entry) => entry.Reports.Count == 0
        ? LastValues(entry)
        : Sentence.Join(
            Line(entry, entry.Reports.Select(r => ReportTexts.InDetail(r, entry))), entry.Last.Count == 0 ? "" : $"Last values: {Values(entry)}.");

    private static IEnumerable<string> NotTaken(HandoverEntry entry) =>
        entry.NotTaken.GroupBy(n => n.Reason).Select(g =>
            $"{(g.Any(n => n.Sign is null) ? "all that was open" : Signs(g.Select(n => n.Sign).OfType<VitalSign>()))}, {NotTakenTexts.Reason(g.Key)}");

    private static string Signs(IEnumerable<VitalSign> signs) => Sentence.List([.. signs.Distinct().Select(SignNames.Of)]);

    /// <summary>", usual seven two"; empty where nothing is.</summary>
    public static string Usual(VitalSign sign, Resident resident)
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
