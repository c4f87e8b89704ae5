using HandsFree.Core.Quantities;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Pdf;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Trends;

/// <summary>The trend sheet as PDF.</summary>
public static class TrendPdf
{
    private const double LeastHeight = 64;
    private const double MostHeight = 92;
    private static readonly TextStyle ChartHeading = new(10.5, Bold: true);
    private const double TimeColumn = 76;
    private static readonly TextStyle Aside = new(10);
    private static readonly TextStyle Number = new(12, Bold: true);
    private static readonly TextStyle Details = new(9.5, Ink: Ink.Grey);

    /// <summary>The whole file.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="paper">On which it is printed.</param>
    public static byte[] Write(TrendSheet sheet, Paper paper)
    {
        using PdfSheet pdf = new(paper, $"Trend {Clock.Whole(sheet.Facts.At)}", sheet.Facts.At);
        pdf.BeginSet();
        pdf.Text(PageTexts.TrendTitle, new(20, Bold: true), pdf.Left, pdf.Width);
        pdf.Text(sheet.Who, new(13, Bold: true), pdf.Left, pdf.Width);
        pdf.RunningHead = () =>
        {
            pdf.Text($"{sheet.Who}, {Clock.Whole(sheet.Facts.At)}", new(11, Bold: true), pdf.Left, pdf.Width);
            pdf.Y += 6;
        };
        foreach (string line in new[] { PageTexts.Facts(sheet.Facts) }.Concat(sheet.Notes).Append(PageTexts.ChartKey))
        {
            pdf.Text(line, Aside, pdf.Left, pdf.Width);
            pdf.Y += 1;
        }

        pdf.Y += 2;
        Charts(pdf, sheet.Charts);

        pdf.Text(PageTexts.Cautions, Aside, pdf.Left, pdf.Width);
        Table(pdf, sheet);
        return pdf.Save();
    }

    /// <summary>As high as all of them have room on the page.</summary>
    private static void Charts(PdfSheet pdf, IReadOnlyList<TrendChart> charts)
    {
        double headings = charts.Sum(c => pdf.Height(c.Heading, ChartHeading, pdf.Width));
        double height = Math.Clamp(((pdf.Room - headings) / charts.Count) - 2.5, LeastHeight, MostHeight);
        foreach (TrendChart chart in charts)
        {
            pdf.Need(height + pdf.Height(chart.Heading, ChartHeading, pdf.Width));
            pdf.Text(chart.Heading, ChartHeading, pdf.Left, pdf.Width);
            MonthChart.Draw(pdf.Canvas, chart.Chart, pdf.Left, pdf.Y, pdf.Width, height);
            pdf.Y += height + 2;
        }
    }

    private static void Table(PdfSheet pdf, TrendSheet sheet)
    {
        IReadOnlyList<VitalSign> columns = TrendColumns.Of(sheet);
        double column = (pdf.Width - TimeColumn) / columns.Count;
        void Names()
        {
            pdf.Canvas.Text(new(pdf.Left, pdf.Y + 11), "Time", new(11, Bold: true));
            foreach ((VitalSign sign, int i) in columns.Select((sign, i) => (sign, i)))
            {
                pdf.Canvas.Text(new(pdf.Left + TimeColumn + (i * column), pdf.Y + 11), PageTexts.Column(sign, sheet.Facts.Units), new(11, Bold: true));
            }

            pdf.Y += 15;
            pdf.Rule(1.25, Ink.Black);
            pdf.Y += 2;
        }

        pdf.Need(120);
        HandoverPdf.Heading(pdf, PageTexts.EveryReading);
        if (sheet.Rows.Count == 0)
        {
            pdf.Text(PageTexts.NoReading, new(12), pdf.Left, pdf.Width);
            return;
        }

        Names();
        Action? head = pdf.RunningHead;
        pdf.RunningHead = () =>
        {
            head?.Invoke();
            Names();
        };
        foreach (TrendRow row in sheet.Rows)
        {
            Row(pdf, row, columns, column);
        }
    }

    private static void Row(PdfSheet pdf, TrendRow row, IReadOnlyList<VitalSign> columns, double column)
    {
        double inner = column - 5;
        double Height(VitalSign sign) => (row.Cells.GetValueOrDefault(sign) ?? []).Sum(c => 15 + pdf.Height(string.Join(", ", c.Details), Details, inner));
        double height = Math.Max(15 + pdf.Height(row.By, Details, TimeColumn - 5), columns.Max(Height)) + 4;
        pdf.Need(height);
        double top = pdf.Y;
        pdf.Canvas.Text(new(pdf.Left, top + 12), row.When, new(11, Bold: true));
        pdf.Y = top + 15;
        pdf.Text(row.By, Details, pdf.Left, TimeColumn - 5);
        foreach ((VitalSign sign, int i) in columns.Select((sign, i) => (sign, i)))
        {
            pdf.Y = top;
            foreach (TrendCell cell in row.Cells.GetValueOrDefault(sign) ?? [])
            {
                Cell(pdf, cell, pdf.Left + TimeColumn + (i * column), inner);
            }
        }

        pdf.Y = top + height - 2;
        pdf.Rule(0.5, Ink.Rule);
        pdf.Y = top + height;
    }

    private static void Cell(PdfSheet pdf, TrendCell cell, double left, double width)
    {
        TextStyle style = cell.CountsNoMore ? Number with { Bold = false, Ink = Ink.Grey } : Number;
        double end = left + pdf.Canvas.Width(cell.Value, style);
        pdf.Canvas.Text(new(left, pdf.Y + 12), cell.Value, style);
        if (cell.CountsNoMore)
        {
            pdf.Canvas.Segment(left - 1, pdf.Y + 8, end + 1, pdf.Y + 8, new(Ink.Black, 1));
        }

        if (cell.Mark is { } mark)
        {
            Marks.Draw(pdf.Canvas, mark, new(end + 8, pdf.Y + 8), 8);
            pdf.Canvas.Text(new(end + 14, pdf.Y + 12), Marks.Word(mark), new(9.5, Bold: true));
        }

        pdf.Y += 15;
        pdf.Text(string.Join(", ", cell.Details), Details, left, width);
    }
}
