using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
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
        return $"{report.Id}  {Place(report.Resident)}{Name(report.Resident)}: {EnumWords.Of(report.State)}{overdue}, report {Soon(report.Urgency)}, "
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
                urgency = Soon(report.Urgency),
                overdue = report.IsOverdue(home.Settings.Overdue, now),
                what = What(report),
                opened = home.Settings.Here(report.At).ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture),
            },
            Options);
    }

    /// <summary>The recheck's id, place, what was measured and how soon a nurse must know of it.</summary>
    public string Text(RecheckChain chain)
    {
        string overdue = IsOverdue(chain) ? ", OVERDUE" : "";
        return $"{chain.Waiting!.Id}  {Place(chain.Resident)}{Name(chain.Resident)}: recheck waits{overdue}, not done: report {Soon(chain.Urgency)}, "
            + $"{What(chain.Sign, chain.Readings)}, {home.Settings.Here(chain.Waiting.At).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}";
    }

    /// <summary>One JSON object.</summary>
    public string Json(RecheckChain chain)
    {
        Resident? resident = home.Roster.ById(chain.Resident);
        return JsonSerializer.Serialize(
            new
            {
                id = chain.Waiting!.Id,
                resident = chain.Resident,
                room = resident?.Room,
                bed = resident?.Bed,
                unit = resident?.Unit,
                name = home.Settings.NamesOnScreen ? resident?.Name : null,
                state = "recheck waits",
                urgency = Soon(chain.Urgency),
                overdue = IsOverdue(chain),
                what = What(chain.Sign, chain.Readings),
                opened = home.Settings.Here(chain.Waiting.At).ToString("yyyy-MM-dd'T'HH:mmzzz", CultureInfo.InvariantCulture),
            },
            Options);
    }

    private bool IsOverdue(RecheckChain chain) => now - chain.Waiting!.DueAt > home.Settings.Overdue.Recheck;

    private static string Soon(ReportUrgency? urgency) => urgency == ReportUrgency.Now ? "now" : "this shift";

    private string Place(string id) => home.Roster.ById(id) switch
    {
        null => $"resident {id}, no longer on the roster",
        { Bed: { } bed } r => $"room {r.Room} bed {bed.ToUpperInvariant()}",
        var r => $"room {r.Room}",
    };

    private string Name(string id) => home.Settings.NamesOnScreen && home.Roster.ById(id) is { } resident ? $" [{resident.Name}]" : "";

    private string What(Report report) => report.Sign is not { } sign
        ? report.Situation
        : What(sign, report.Readings.Select(readings.GetValueOrDefault).OfType<ReadingRecorded>());

    private static string What(VitalSign sign, IEnumerable<ReadingRecorded> values) =>
        $"{RosterWords.Of(RosterWords.Signs, sign)} {string.Join(", then ", values.Select(r => WrittenReading.Value(r.Confirmed.Reading.Value)))}".TrimEnd();
}
