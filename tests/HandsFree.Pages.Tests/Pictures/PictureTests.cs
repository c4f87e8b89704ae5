using HandsFree.Pages.Handovers;
using HandsFree.Pages.Trends;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>The pages as pictures: the PDF drawn by poppler, the HTML printed by Chromium and drawn by poppler.</summary>
public sealed class PictureTests : IDisposable
{
    private const string Resolution = "64";
    private readonly string folder = Directory.CreateTempSubdirectory("handsfree-pictures-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("A4", 1)]
    [InlineData("A4", 2)]
    [InlineData("Letter", 1)]
    public void The_handover_as_pdf(string paper, int page)
    {
        string pdf = Save("handover.pdf", HandoverPdf.Write(InventedUnit.Handover(), Paper.Of(paper)!));

        Approved.Match(Picture(pdf, page), $"handover-{paper}-{page}");
    }

    [Fact]
    public void The_trend_as_pdf()
    {
        string pdf = Save("trend.pdf", TrendPdf.Write(InventedUnit.Trend(), Paper.A4));

        Approved.Match(Picture(pdf, 1), "trend-A4-1");
    }

    [Fact]
    public void The_handover_as_html()
    {
        string pdf = Printed(HandoverHtml.Write(InventedUnit.Handover(), Paper.A4));

        Approved.Match(Picture(pdf, 1), "handover-html-1");
        Tool.Run("pdftotext", "-layout", pdf, "-").ShouldContain("page 2 of ");
    }

    [Fact]
    public void The_trend_as_html()
    {
        string pdf = Printed(TrendHtml.Write(InventedUnit.Trend(), Paper.A4));

        Approved.Match(Picture(pdf, 1), "trend-html-1");
    }

    [Fact]
    public void Another_picture_is_found()
    {
        string pdf = Save("handover.pdf", HandoverPdf.Write(InventedUnit.Handover(), Paper.A4));
        GreyPicture one = GreyPicture.Read(Picture(pdf, 1));
        string other = Save("other.pdf", HandoverPdf.Write(InventedUnit.Handover() with { Facts = InventedUnit.Facts() with { Home = "Another", Device = "another" } }, Paper.A4));

        one.ShareOfBlocksThatDiffer(GreyPicture.Read(Picture(other, 1)), 24).ShouldBeGreaterThan(0.004);
        one.ShareOfBlocksThatDiffer(one, 0).ShouldBe(0);
    }

    private string Printed(string html)
    {
        string page = Save("page.html", System.Text.Encoding.UTF8.GetBytes(html));
        string pdf = Path.Combine(folder, "printed.pdf");
        Tool.Run(
            "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-pdf-header-footer", $"--user-data-dir={Path.Combine(folder, "profile")}",
            $"--print-to-pdf={pdf}", $"file://{page}");
        return pdf;
    }

    private string Save(string name, byte[] content)
    {
        string path = Path.Combine(folder, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    private string Picture(string pdf, int page)
    {
        string stem = $"{pdf}-{page}";
        Tool.Run("pdftoppm", "-gray", "-png", "-r", Resolution, "-f", $"{page}", "-l", $"{page}", "-singlefile", pdf, stem);
        return stem + ".png";
    }
}
