using HandsFree.Pages.Drawing;
using HandsFree.Pages.Pdf;
using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Handovers;

/// <summary>The handover sheet as PDF; each unit is a set of pages of its own.</summary>
public static class HandoverPdf
{
    private const double MarkSize = 10;
    private static readonly TextStyle Body = new(12);
    private static readonly TextStyle Strong = new(12, Bold: true);
    private static readonly TextStyle Aside = new(10);

    /// <summary>The whole file.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="paper">On which it is printed.</param>
    public static byte[] Write(HandoverSheet sheet, Paper paper)
    {
        using PdfSheet pdf = new(paper, $"Handover {Clock.Whole(sheet.Facts.At)}", sheet.Facts.At);
        foreach (UnitSheet unit in sheet.Units)
        {
            pdf.BeginSet();
            Head(pdf, unit, sheet.Facts);
            foreach (SheetSection section in unit.Sections)
            {
                Section(pdf, section);
            }

            new EveryonePdf(pdf, sheet.Facts.Units).Write(unit);
        }

        return pdf.Save();
    }

    private static void Head(PdfSheet pdf, UnitSheet unit, SheetFacts facts)
    {
        string title = PageTexts.HandoverTitle(unit.Unit);
        pdf.Text(title, new(20, Bold: true), pdf.Left, pdf.Width);
        pdf.Text(PageTexts.Facts(facts), Aside, pdf.Left, pdf.Width);
        if (facts.Remark is { } remark)
        {
            pdf.Text(PageTexts.Remark(remark), Aside with { Bold = true }, pdf.Left, pdf.Width);
        }

        pdf.Y += 4;
        pdf.Text(unit.Summary, Strong, pdf.Left, pdf.Width);
        pdf.Y += 6;
        double top = pdf.Y;
        pdf.Y += 3;
        pdf.Text(PageTexts.Cautions, Aside, pdf.Left + 5, pdf.Width - 10);
        pdf.Y += 4;
        pdf.Canvas.Rectangle(pdf.Left, top, pdf.Width, pdf.Y - top, null, new(Ink.Black, 0.75));
        pdf.RunningHead = () =>
        {
            pdf.Text($"{title}, {Clock.Whole(facts.At)}", new(11, Bold: true), pdf.Left, pdf.Width);
            pdf.Y += 2;
            pdf.Rule(0.75, Ink.Black);
            pdf.Y += 4;
        };
    }

    private static void Section(PdfSheet pdf, SheetSection section)
    {
        pdf.Need(60);
        Heading(pdf, section.Heading);
        if (section.Items.Count == 0)
        {
            pdf.Text(section.IfNone, Body, pdf.Left, pdf.Width);
        }

        foreach (SheetItem item in section.Items)
        {
            Item(pdf, item);
        }
    }

    internal static void Heading(PdfSheet pdf, string text)
    {
        pdf.Y += 8;
        pdf.Text(text, new(14, Bold: true), pdf.Left, pdf.Width);
        pdf.Y += 2;
        pdf.Rule(1.25, Ink.Black);
        pdf.Y += 3;
    }

    private static void Item(PdfSheet pdf, SheetItem item)
    {
        double height = 18 + item.Lines.Select((line, i) => pdf.Height(line, i == 0 ? Strong : Body, pdf.Width)).Sum() + (item.WriteIn.Count > 0 ? 22 : 0);
        pdf.Need(height);
        double baseline = pdf.Y + 13;
        double x = PlaceMark(pdf, item.Mark, pdf.Left, baseline) + 8;
        pdf.Canvas.Text(new(x, baseline), item.Place, Strong);
        x += pdf.Canvas.Width(item.Place, Strong) + 6;
        pdf.Canvas.Text(new(x, baseline), item.Name, Body);
        pdf.Canvas.Text(new(pdf.Right, baseline), item.When, new(11, Anchor: Anchor.End));
        pdf.Y += 16;
        foreach ((string line, int i) in item.Lines.Select((line, i) => (line, i)))
        {
            pdf.Text(line, i == 0 ? Strong : Body, pdf.Left, pdf.Width);
        }

        if (item.WriteIn.Count > 0)
        {
            WriteIn(pdf, item.WriteIn);
        }

        pdf.Y += 3;
        pdf.Rule(0.5, Ink.Rule);
        pdf.Y += 2;
    }

    private static void WriteIn(PdfSheet pdf, IReadOnlyList<string> words)
    {
        pdf.Y += 21;
        double each = pdf.Width / words.Count;
        foreach ((string word, int i) in words.Select((word, i) => (word, i)))
        {
            double left = pdf.Left + (i * each);
            pdf.Canvas.Text(new(left, pdf.Y), word, Body);
            pdf.Canvas.Segment(left + pdf.Canvas.Width(word, Body) + 4, pdf.Y + 1, left + each - 8, pdf.Y + 1, new(Ink.Black, 0.75));
        }

        pdf.Y += 3;
    }

    /// <summary>A mark with its word on a base line.</summary>
    /// <returns>Where it ends.</returns>
    internal static double PlaceMark(PdfSheet pdf, Mark mark, double left, double baseline)
    {
        Marks.Draw(pdf.Canvas, mark, new(left + (MarkSize / 2), baseline - 4.2), MarkSize);
        pdf.Canvas.Text(new(left + MarkSize + 4, baseline), Marks.Word(mark), Strong);
        return left + MarkSize + 4 + pdf.Canvas.Width(Marks.Word(mark), Strong);
    }
}
