using System.Text.RegularExpressions;
using HandsFree.Core.Residents;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Trends;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>The PDF as another program reads it: poppler's pdftotext, pdffonts and pdfinfo.</summary>
public sealed partial class PdfTextTests : IDisposable
{
    private readonly string file = Path.Combine(Directory.CreateTempSubdirectory("handsfree-pdf-").FullName, "page.pdf");

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);

    private string Text(byte[] pdf)
    {
        File.WriteAllBytes(file, pdf);
        return Spaces().Replace(Tool.Run("pdftotext", "-raw", file, "-"), " ");
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void The_handover_holds_every_resident_every_value_and_every_exception(string paper)
    {
        HandoverSheet sheet = InventedUnit.Handover();

        string text = Text(HandoverPdf.Write(sheet, Paper.Of(paper)!));

        foreach (SheetItem item in sheet.Units.SelectMany(u => u.Sections).SelectMany(s => s.Items))
        {
            item.Lines.Append(item.Place).Append(item.When).Append(Pages.Drawing.Marks.Word(item.Mark))
                .ShouldAllBe(line => text.Contains(line, StringComparison.Ordinal));
        }

        foreach (ResidentBlock block in sheet.Units.SelectMany(u => u.Everyone))
        {
            text.ShouldContain($"{block.Place} {block.Name}");
            foreach (SignCell cell in block.Cells.Where(c => c.Value is not null))
            {
                text.ShouldContain(cell.Value!);
                text.ShouldContain(Texts.PageTexts.WhenAndHow(cell));
                text.ShouldContain(cell.Usual is { } usual ? Texts.PageTexts.Usual(usual) : "");
            }
        }

        text.ShouldContain("not a medical device");
        text.ShouldContain("page 1 of 3");
        text.ShouldContain("page 3 of 3");
        text.ShouldContain("desk-birch");
    }

    [Fact]
    public void The_trend_holds_every_reading_also_those_that_count_no_more()
    {
        TrendSheet sheet = InventedUnit.Trend();

        string text = Text(TrendPdf.Write(sheet, Paper.A4));

        foreach (TrendRow row in sheet.Rows)
        {
            text.ShouldContain(row.When);
            row.Cells.Values.SelectMany(c => c).ShouldAllBe(c => text.Contains(c.Value, StringComparison.Ordinal));
        }

        text.ShouldContain("corrected to 100.6");
        text.ShouldContain("late entry");
        text.ShouldContain("said as a guess");
    }

    [Fact]
    public void A_name_with_letters_of_another_country_is_whole()
    {
        const string Name = "Łucja Żółć-Ångström Ðorđe Θάλεια Жанна";
        Roster roster = new([InventedUnit.Roster.Residents[0] with { Name = Name }]);

        Text(HandoverPdf.Write(HandoverSheet.Of(InventedUnit.Facts(), InventedUnit.Journal, roster, InventedUnit.Rules), Paper.A4)).ShouldContain(Name);
    }

    [Fact]
    public void The_font_is_in_the_file_and_the_paper_is_what_was_asked_for()
    {
        Text(HandoverPdf.Write(InventedUnit.Handover(), Paper.Letter));

        string[] fonts = [.. Tool.Run("pdffonts", file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];
        fonts.ShouldNotBeEmpty();
        fonts.ShouldAllBe(line => line.Contains("+Liberation Sans", StringComparison.Ordinal) && EmbeddedWithLetters().IsMatch(line));
        Tool.Run("pdfinfo", file).ShouldContain("612 x 792 pts (letter)");
        new FileInfo(file).Length.ShouldBeLessThan(300_000);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    // The columns emb, sub, uni of pdffonts.
    [GeneratedRegex(@" yes +yes +yes ")]
    private static partial Regex EmbeddedWithLetters();
}
