using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;

namespace HandsFree.App.Reports;

/// <summary>One report as a line of the list.</summary>
internal sealed class ReportLines(Home home, IReadOnlyList<JournalEvent> events, DateTimeOffset now)
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private readonly Dictionary<string, ReadingRecorded> readings = events.OfType<ReadingRecorded>().DistinctBy(r => r.Id).ToDictionary(r => r.Id);

    /// <summary>Id, place, how far it has come, what it is about.</summary>
    public string Text(Report report)
    {
        string overdue = report.IsOverdue(home.Settings.Overdue, now) ? ", OVERDUE" : "";
        return $"{report.Id}  {Place(report)}{Name(report)}: {EnumWords.Of(report.State)}{overdue}, report {(report.Urgency == ReportUrgency.Now ? "now" : "this shift")}, "
            + $"{What(report)}, {home.Settings.Here(report.At).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}";
    }

    /// <summary>One JSON object.</summary>
    public string Json(Report report)
    {
        Resident? resident = home.Roster.ById(report.Resident);
        return JsonSerializer.Serialize(
            new
            {
                id = report.Id,
                resident = report.Resident,
                room = resident?.Room,
                bed = resident?.Bed,
                unit = resident?.Unit,
                name = home.Settings.NamesOnScreen ? resident?.Name : null,
                state = EnumWords.Of(report.State),
                urgency = report.Urgency == ReportUrgency.Now ? "now" : "this shift",
                overdue = report.IsOverdue(home.Settings.Overdue, now),
                what = What(report),
                opened = home.Settings.Here(report.At).ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture),
            },
            Options);
    }

    private string Place(Report report) => home.Roster.ById(report.Resident) switch
    {
        null => $"resident {report.Resident}, no longer on the roster",
        { Bed: { } bed } r => $"room {r.Room} bed {bed.ToUpperInvariant()}",
        var r => $"room {r.Room}",
    };

    private string Name(Report report) => home.Settings.NamesOnScreen && home.Roster.ById(report.Resident) is { } resident ? $" [{resident.Name}]" : "";

    private string What(Report report)
    {
        string[] values = [.. report.Readings.Select(readings.GetValueOrDefault).OfType<ReadingRecorded>().Select(r => WrittenReading.Value(r.Confirmed.Reading.Value))];
        return report.Sign is not { } sign ? report.Situation : $"{RosterWords.Of(RosterWords.Signs, sign)} {string.Join(", then ", values)}".TrimEnd();
    }
}
