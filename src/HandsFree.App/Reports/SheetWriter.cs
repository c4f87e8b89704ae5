using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;

namespace HandsFree.App.Reports;

/// <summary>A report's sheet as text and as JSON.</summary>
internal sealed class SheetWriter(Home home, DateTimeOffset now)
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>"Room 12 bed A", with the name where the home shows names.</summary>
    public static string Place(ReportSheet sheet, Home home) =>
        home.Settings.NamesOnScreen && home.Roster.ById(sheet.Report.Resident) is { } resident ? $"{sheet.Place} [{resident.Name}]" : sheet.Place;

    /// <summary>The sections with their headings, and the cautions.</summary>
    public string Text(ReportSheet sheet)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"Report {sheet.Report.Id}, {EnumWords.Of(sheet.Report.State)}\n{Place(sheet, home)}. {sheet.Heading}\n");
        Section(text, "Situation", sheet.Situation);
        Section(text, "Background", sheet.Background);
        Section(text, "Assessment", [sheet.Assessment]);
        Section(text, "Recommendation", sheet.Recommendation);
        Section(text, "Course", sheet.Course);
        text.Append(CultureInfo.InvariantCulture, $"\nMade {now:yyyy-MM-dd HH:mm}. {Cautions.Text.ReplaceLineEndings(" ")}");
        return home.Settings.Wording.Of(text.ToString()).ReplaceLineEndings();
    }

    /// <summary>One JSON object.</summary>
    public string Json(ReportSheet sheet)
    {
        Resident? resident = home.Roster.ById(sheet.Report.Resident);
        return JsonSerializer.Serialize(
            new
            {
                id = sheet.Report.Id,
                resident = sheet.Report.Resident,
                room = resident?.Room,
                bed = resident?.Bed,
                unit = resident?.Unit,
                name = home.Settings.NamesOnScreen ? resident?.Name : null,
                state = EnumWords.Of(sheet.Report.State),
                overdue = sheet.Report.IsOverdue(home.Settings.Overdue, now),
                heading = sheet.Heading,
                situation = sheet.Situation,
                background = sheet.Background,
                assessment = sheet.Assessment,
                recommendation = sheet.Recommendation,
                course = sheet.Course,
            },
            Options);
    }

    private static void Section(StringBuilder text, string heading, IReadOnlyList<string> lines)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n{heading}\n");
        foreach (string line in lines)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {line}\n");
        }
    }
}
