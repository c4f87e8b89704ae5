using System.Globalization;
using System.Text;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Html;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Trends;

/// <summary>The trend sheet as one HTML file.</summary>
public static class TrendHtml
{
    private const double Width = 527;
    private const double Height = 88;

    /// <summary>The whole document.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="paper">On which it is printed.</param>
    public static string Write(TrendSheet sheet, Paper paper)
    {
        StringBuilder body = new();
        body.Append(CultureInfo.InvariantCulture, $"<h1>{Markup.Text(PageTexts.TrendTitle)}</h1>\n<p class=\"summary\">{Markup.Text(sheet.Who)}</p>\n");
        body.Append(CultureInfo.InvariantCulture, $"<p class=\"facts\">{Markup.Text(PageTexts.Facts(sheet.Facts))}</p>\n");
        foreach (string note in sheet.Notes)
        {
            body.Append(CultureInfo.InvariantCulture, $"<p class=\"facts\">{Markup.Text(note)}</p>\n");
        }

        body.Append(CultureInfo.InvariantCulture, $"<p class=\"key\">{Markup.Text(PageTexts.ChartKey)}</p>\n");
        foreach (TrendChart chart in sheet.Charts)
        {
            SvgCanvas canvas = new(Width, Height);
            MonthChart.Draw(canvas, chart.Chart, 0, 0, Width, Height);
            body.Append(CultureInfo.InvariantCulture, $"<div class=\"chart\"><p><b>{Markup.Text(chart.Heading)}</b></p>{canvas.Element("month", $"Chart of {Written.Name(chart.Sign)}; the readings stand in the table below")}</div>\n");
        }

        body.Append(CultureInfo.InvariantCulture, $"<p class=\"cautions\">{Markup.Text(PageTexts.Cautions)}</p>\n<h2>{PageTexts.EveryReading}</h2>\n");
        Table(body, sheet);
        return PageShell.Document($"Trend {Clock.Whole(sheet.Facts.At)}", paper, body.ToString());
    }

    private static void Table(StringBuilder body, TrendSheet sheet)
    {
        if (sheet.Rows.Count == 0)
        {
            body.Append(CultureInfo.InvariantCulture, $"<p>{PageTexts.NoReading}</p>\n");
            return;
        }

        body.Append("<table class=\"readings\"><thead><tr><th scope=\"col\">Time</th>");
        foreach (var sign in TrendColumns.Of(sheet))
        {
            body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{Markup.Text(PageTexts.Column(sign, sheet.Facts.Units))}</th>");
        }

        body.Append("</tr></thead>\n<tbody>\n");
        foreach (TrendRow row in sheet.Rows)
        {
            body.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Markup.Text(row.When)}<span class=\"small\">{Markup.Text(row.By)}</span></th>");
            foreach (var sign in TrendColumns.Of(sheet))
            {
                body.Append(CultureInfo.InvariantCulture, $"<td>{string.Concat((row.Cells.GetValueOrDefault(sign) ?? []).Select(Cell))}</td>");
            }

            body.Append("</tr>\n");
        }

        body.Append("</tbody></table>\n");
    }

    private static string Cell(TrendCell cell)
    {
        string value = cell.CountsNoMore ? $"<s class=\"number\">{Markup.Text(cell.Value)}</s>" : $"<b class=\"number\">{Markup.Text(cell.Value)}</b>";
        string mark = cell.Mark is { } beyond ? $" <span class=\"side\">{MarkHtml.Shape(beyond)}{Drawing.Marks.Word(beyond)}</span>" : "";
        return $"<div class=\"reading\">{value}{mark}<span class=\"details\">{Markup.Text(string.Join(", ", cell.Details))}</span></div>";
    }
}
