using System.Globalization;
using System.Text;
using HandsFree.Core.Residents;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Html;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Handovers;

/// <summary>The handover sheet as one HTML file.</summary>
public static class HandoverHtml
{
    private const double TrendWidth = 82;
    private const double TrendHeight = 30;

    /// <summary>The whole document.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="paper">On which it is printed.</param>
    public static string Write(HandoverSheet sheet, Paper paper)
    {
        StringBuilder body = new();
        foreach (UnitSheet unit in sheet.Units)
        {
            Unit(body, unit, sheet.Facts);
        }

        return PageShell.Document($"Handover {Clock.Whole(sheet.Facts.At)}", paper, body.ToString());
    }

    private static void Unit(StringBuilder body, UnitSheet unit, SheetFacts facts)
    {
        body.Append("<section class=\"unit\">\n");
        Line(body, $"<h1>{Text(PageTexts.HandoverTitle(unit.Unit))}</h1>");
        Line(body, $"<p class=\"facts\">{Text(PageTexts.Facts(facts))}</p>");
        if (facts.Remark is { } remark)
        {
            Line(body, $"<p class=\"facts\"><b>{Text(PageTexts.Remark(remark))}</b></p>");
        }

        Line(body, $"<p class=\"summary\">{Text(unit.Summary)}</p>");
        Line(body, $"<p class=\"cautions\">{Text(PageTexts.Cautions)}</p>");
        foreach (SheetSection section in unit.Sections)
        {
            Line(body, $"<h2>{Text(section.Heading)}</h2>");
            if (section.Items.Count == 0)
            {
                Line(body, $"<p class=\"none\">{Text(section.IfNone)}</p>");
            }

            foreach (SheetItem item in section.Items)
            {
                Item(body, item);
            }
        }

        Line(body, $"<h2>{PageTexts.Everyone}</h2>");
        Line(body, $"<p class=\"key\">{Text(PageTexts.TrendKey)}</p>");
        Everyone(body, unit, facts.Units);
        body.Append("</section>\n");
    }

    private static void Item(StringBuilder body, SheetItem item)
    {
        body.Append("<div class=\"item\">");
        body.Append(CultureInfo.InvariantCulture, $"<span class=\"when\">{Text(item.When)}</span>{MarkHtml.Of(item.Mark)}");
        body.Append(CultureInfo.InvariantCulture, $"<span class=\"place\">{Text(item.Place)}</span> <span class=\"name\">{Text(item.Name)}</span>");
        foreach (string line in item.Lines)
        {
            body.Append(CultureInfo.InvariantCulture, $"<p>{Text(line)}</p>");
        }

        if (item.WriteIn.Count > 0)
        {
            body.Append(CultureInfo.InvariantCulture, $"<div class=\"write\">{string.Concat(item.WriteIn.Select(w => $"<b>{Text(w)}</b><span></span>"))}</div>");
        }

        body.Append("</div>\n");
    }

    private static void Everyone(StringBuilder body, UnitSheet unit, RosterUnits units)
    {
        body.Append("<table><thead><tr>");
        foreach (var sign in UnitSheet.Columns)
        {
            body.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\">{Text(PageTexts.Column(sign, units))}</th>");
        }

        body.Append("</tr></thead>\n");
        foreach (ResidentBlock resident in unit.Everyone)
        {
            body.Append(CultureInfo.InvariantCulture, $"<tbody><tr><th colspan=\"{UnitSheet.Columns.Count}\" scope=\"rowgroup\">");
            body.Append(string.Concat(resident.Marks.Select(MarkHtml.Of)));
            body.Append(CultureInfo.InvariantCulture, $"<span class=\"place\">{Text(resident.Place)}</span> {Text(resident.Name)}");
            body.Append(resident.Notes.Length > 0 ? $" <span class=\"notes\">{Text(resident.Notes)}</span>" : "");
            body.Append("</th></tr>\n<tr>");
            foreach (SignCell cell in resident.Cells)
            {
                Cell(body, cell);
            }

            body.Append("</tr></tbody>\n");
        }

        body.Append("</table>\n");
    }

    private static void Cell(StringBuilder body, SignCell cell)
    {
        body.Append(cell.IsOld ? "<td class=\"old\">" : "<td>");
        string side = cell.Mark is { } mark ? $" <span class=\"side\">{MarkHtml.Shape(mark)}{Marks.Word(mark)}</span>" : "";
        body.Append(CultureInfo.InvariantCulture, $"<span class=\"value\">{Text(cell.Value ?? "–")}</span>{side}");
        body.Append(CultureInfo.InvariantCulture, $"<span class=\"small\">{Text(PageTexts.WhenAndHow(cell))}</span>");
        body.Append(CultureInfo.InvariantCulture, $"<span class=\"small\">{(cell.Usual is { } usual ? Text(PageTexts.Usual(usual)) : "&nbsp;")}</span>");
        SvgCanvas canvas = new(TrendWidth, TrendHeight);
        SmallTrend.Draw(canvas, cell.Trend, 0.5, 0.5, TrendWidth - 1, TrendHeight - 1);
        body.Append(canvas.Element("trend", null));
        body.Append("</td>");
    }

    private static string Text(string text) => Markup.Text(text);

    private static void Line(StringBuilder body, string line) => body.Append(line).Append('\n');
}
