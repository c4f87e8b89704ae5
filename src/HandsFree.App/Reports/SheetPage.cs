using System.Globalization;
using System.Net;
using System.Text;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Core.Reports.Sheets;

namespace HandsFree.App.Reports;

/// <summary>A report's sheet as one page of HTML: no script, nothing from elsewhere, black on white, for A4 and Letter.</summary>
internal static class SheetPage
{
    private const string Style = """
        @page { margin: 18mm } body { font: 13pt/1.4 sans-serif; max-width: 170mm; margin: 8mm auto; color: #000; background: #fff }
        h1 { font-size: 20pt; margin: 0 } h2 { font-size: 13pt; margin: 6mm 0 1mm; border-bottom: 1pt solid #000 }
        ul { margin: 0; padding-left: 5mm } .state { font-weight: bold } .space { height: 22mm } footer { margin-top: 8mm; font-size: 9pt }
        """;

    /// <summary>The page. Where assessment and recommendation are left for the nurse there is room to write.</summary>
    public static string Of(ReportSheet sheet, Home home, DateTimeOffset now)
    {
        StringBuilder page = new();
        string place = Text(SheetWriter.Place(sheet, home));
        bool isLeft = sheet.Report.Acknowledged is null;
        page.Append(CultureInfo.InvariantCulture, $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{place}: report</title><style>\n{Style}</style></head><body>\n");
        page.Append(CultureInfo.InvariantCulture, $"<h1>{place}</h1>\n<p><span class=\"state\">{Text(sheet.Heading)}</span><br>Report {Text(sheet.Report.Id)}, {EnumWords.Of(sheet.Report.State)}</p>\n");
        Section(page, "Situation", sheet.Situation, false);
        Section(page, "Background", sheet.Background, false);
        Section(page, "Assessment", [sheet.Assessment], true);
        Section(page, "Recommendation", sheet.Recommendation, isLeft);
        Section(page, "Course", sheet.Course, false);
        page.Append(CultureInfo.InvariantCulture, $"<footer>{Text(home.Settings.Name is { } name ? name + ". " : "")}Made {now:yyyy-MM-dd HH:mm}. {Text(Cautions.Text.ReplaceLineEndings(" "))}</footer>\n</body></html>\n");
        return home.Settings.Wording.Of(page.ToString());
    }

    private static void Section(StringBuilder page, string heading, IReadOnlyList<string> lines, bool toWrite)
    {
        page.Append(CultureInfo.InvariantCulture, $"<h2>{heading}</h2>\n<ul>");
        foreach (string line in lines)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Text(line)}</li>");
        }

        page.Append("</ul>\n").Append(toWrite ? "<div class=\"space\"></div>\n" : "");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
