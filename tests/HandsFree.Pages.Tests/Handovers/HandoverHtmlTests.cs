using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Handovers;
using HandsFree.Pages.Trends;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Handovers;

/// <summary>The HTML pages as an independent parser reads them (AngleSharp, by the HTML standard of WHATWG; strict: any parse error throws).</summary>
public sealed partial class HandoverHtmlTests
{
    private static readonly string Handover = HandoverHtml.Write(InventedUnit.Handover(), Paper.Letter);
    private static readonly string Trend = TrendHtml.Write(InventedUnit.Trend(), Paper.A4);

    public static TheoryData<string> Pages => ["handover", "trend"];

    private static string Of(string page) => page == "handover" ? Handover : Trend;

    private static IHtmlDocument Read(string html) => new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(html);

    [Theory]
    [MemberData(nameof(Pages))]
    public void It_has_no_error_by_the_standard(string page) => Should.NotThrow(() => Read(Of(page)));

    [Fact]
    public void An_error_would_be_found() => Should.Throw<HtmlParseException>(() => Read(Handover.Replace("</section>", "</div>", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Pages))]
    public void It_is_whole_by_itself_and_has_no_script(string page)
    {
        IHtmlDocument document = Read(Of(page));

        document.QuerySelectorAll("script, link, img, iframe, object, embed, a, form").ShouldBeEmpty();
        document.All.SelectMany(e => e.Attributes).ShouldAllBe(a => !a.Name.StartsWith("on", StringComparison.Ordinal) && a.Name != "src" && a.Name != "href");
        Of(page).ShouldNotContain("url(");
        Of(page).ShouldNotContain("@import");
        document.DocumentElement.GetAttribute("lang").ShouldBe("en");
        document.CharacterSet!.ToLowerInvariant().ShouldBe("utf-8");
    }

    [Fact]
    public void Everything_of_the_sheet_stands_in_the_text()
    {
        HandoverSheet sheet = InventedUnit.Handover();
        string text = Spaces().Replace(Read(Handover).Body!.TextContent, " ");

        foreach (UnitSheet unit in sheet.Units)
        {
            foreach (SheetItem item in unit.Sections.SelectMany(s => s.Items))
            {
                item.Lines.Append(item.Place).Append(item.When).ShouldAllBe(line => text.Contains(line, StringComparison.Ordinal));
            }

            foreach (ResidentBlock block in unit.Everyone)
            {
                text.ShouldContain($"{block.Place} {block.Name}");
                block.Cells.Where(c => c.Value is not null).ShouldAllBe(c => text.Contains(c.Value!, StringComparison.Ordinal) && text.Contains(c.When, StringComparison.Ordinal));
            }
        }

        text.ShouldContain("not a medical device");
        text.ShouldContain("Licensed staff decide");
        text.ShouldContain("desk-birch");
        text.ShouldContain("Personal data");
    }

    [Fact]
    public void A_mark_is_never_without_its_word()
    {
        foreach (IElement mark in Read(Handover).QuerySelectorAll("svg.mark"))
        {
            string word = mark.NextSibling?.TextContent.Trim() ?? "";
            Enum.GetValues<Mark>().Select(Marks.Word).ShouldContain(word);
        }
    }

    // Readable at arm's length (about 65 cm): capitals of 16 minutes of arc are the least for text that is read at length, 12 for what is seldom
    // read (ISO 9241-303, from memory). Capitals of Liberation Sans are 0.716 of the size (its OS/2 table, as Arial's): 12 pt gives 16', 10 pt 13'.
    [Fact]
    public void The_sizes_are_for_reading_at_arm_s_length()
    {
        static double Minutes(double points) => Math.Atan2(points * 0.716 * 25.4 / 72, 650) * 180 / Math.PI * 60;
        string css = Read(Handover).QuerySelector("style")!.TextContent;
        Dictionary<string, double> sizes = Rules().Matches(css).Where(m => Sizes().IsMatch(m.Groups["body"].Value))
            .ToDictionary(m => m.Groups["selector"].Value.Trim(), m => double.Parse(Sizes().Match(m.Groups["body"].Value).Groups["size"].Value, CultureInfo.InvariantCulture));

        Minutes(sizes["body"]).ShouldBeGreaterThan(15.9);
        Minutes(sizes[".value"]).ShouldBeGreaterThan(20);
        foreach (string aside in new[] { ".small", ".side", ".facts, .key, .cautions, .foot", "thead th", ".when" })
        {
            Minutes(sizes[aside]).ShouldBeGreaterThan(12, aside);
        }
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"(?<selector>[^{}@]+)\{(?<body>[^{}]*)\}")]
    private static partial Regex Rules();

    [GeneratedRegex(@"font(-size)?:[^;]*?(?<size>[0-9.]+)pt")]
    private static partial Regex Sizes();
}
