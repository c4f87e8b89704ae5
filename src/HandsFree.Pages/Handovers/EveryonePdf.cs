using HandsFree.Core.Residents;
using HandsFree.Pages.Charts;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Pdf;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Handovers;

/// <summary>The list of everyone in the PDF: a block a resident, a column a sign; the columns are named on every page.</summary>
internal sealed class EveryonePdf(PdfSheet pdf, RosterUnits units)
{
    private const double TrendHeight = 29;
    private const double CellHeight = 17 + 12 + 12 + TrendHeight + 6;
    private const double LeastValue = 12;
    private const double LeastSmall = 8.5;
    private static readonly TextStyle MarkWord = new(10, Bold: true);
    private static readonly TextStyle Value = new(16, Bold: true);
    private static readonly TextStyle Small = new(10, Ink: Ink.Grey);
    private static readonly TextStyle Strong = new(12, Bold: true);
    private static readonly TextStyle Notes = new(10.5, Ink: Ink.Grey);

    private double Column => pdf.Width / UnitSheet.Columns.Count;

    public void Write(UnitSheet unit)
    {
        pdf.Need(200);
        HandoverPdf.Heading(pdf, PageTexts.Everyone);
        pdf.Text(PageTexts.TrendKey, new(10), pdf.Left, pdf.Width);
        pdf.Y += 2;
        ColumnNames();
        Action? head = pdf.RunningHead;
        pdf.RunningHead = () =>
        {
            head?.Invoke();
            ColumnNames();
        };
        foreach (ResidentBlock resident in unit.Everyone)
        {
            Resident(resident);
        }
    }

    private void ColumnNames()
    {
        foreach ((string name, int i) in UnitSheet.Columns.Select((sign, i) => (PageTexts.Column(sign, units), i)))
        {
            pdf.Canvas.Text(new(pdf.Left + (i * Column) + 2, pdf.Y + 11), name, new(11, Bold: true));
        }

        pdf.Y += 15;
        pdf.Rule(1.25, Ink.Black);
        pdf.Y += 2;
    }

    private void Resident(ResidentBlock resident)
    {
        double marks = resident.Marks.Sum(m => 22 + pdf.Canvas.Width(Marks.Word(m), Strong));
        double named = marks + pdf.Canvas.Width($"{resident.Place} {resident.Name}", Strong) + 10;
        bool beside = named + pdf.Canvas.Width(resident.Notes, Notes) <= pdf.Width;
        double notes = resident.Notes.Length == 0 || beside ? 0 : pdf.Height(resident.Notes, Notes, pdf.Width);
        pdf.Need(18 + notes + CellHeight);
        double baseline = pdf.Y + 13;
        double x = pdf.Left + 2;
        foreach (Mark mark in resident.Marks)
        {
            x = HandoverPdf.PlaceMark(pdf, mark, x, baseline) + 8;
        }

        pdf.Canvas.Text(new(x, baseline), $"{resident.Place} {resident.Name}", Strong);
        if (beside)
        {
            pdf.Canvas.Text(new(pdf.Right, baseline), resident.Notes, Notes with { Anchor = Anchor.End });
        }

        pdf.Y += 17;
        if (notes > 0)
        {
            pdf.Text(resident.Notes, Notes, pdf.Left + 2, pdf.Width - 2);
        }

        foreach ((SignCell cell, int i) in resident.Cells.Select((cell, i) => (cell, i)))
        {
            Cell(cell, pdf.Left + (i * Column) + 2);
        }

        pdf.Y += CellHeight - 3;
        pdf.Rule(0.75, Ink.Line);
        pdf.Y += 3;
    }

    /// <summary>The style, smaller where the text would run into the next column, but not below a size.</summary>
    private TextStyle Fitting(string text, TextStyle style, double width, double least)
    {
        while (style.Size > least && pdf.Canvas.Width(text, style) > width)
        {
            style = style with { Size = style.Size - 0.5 };
        }

        return style;
    }

    private void Cell(SignCell cell, double left)
    {
        double top = pdf.Y;
        string value = cell.Value ?? "–";
        double word = cell.Mark is { } beyond ? 14 + pdf.Canvas.Width(Marks.Word(beyond), MarkWord) : 0;
        TextStyle style = Fitting(value, cell.IsOld ? Value with { Bold = false, Ink = Ink.Grey } : Value, Column - 6 - word, LeastValue);
        pdf.Canvas.Text(new(left, top + 15), value, style);
        if (cell.Mark is { } mark)
        {
            double x = left + pdf.Canvas.Width(value, style) + 3;
            Marks.Draw(pdf.Canvas, mark, new(x + 4.5, top + 10), 9);
            pdf.Canvas.Text(new(x + 11, top + 14), Marks.Word(mark), MarkWord);
        }

        pdf.Canvas.Text(new(left, top + 27), PageTexts.WhenAndHow(cell), Fitting(PageTexts.WhenAndHow(cell), Small, Column - 5, LeastSmall));
        string usual = cell.Usual is { } range ? PageTexts.Usual(range) : "";
        pdf.Canvas.Text(new(left, top + 38), usual, Fitting(usual, Small, Column - 5, LeastSmall));
        SmallTrend.Draw(pdf.Canvas, cell.Trend, left, top + 42, Column - 6, TrendHeight);
    }
}
