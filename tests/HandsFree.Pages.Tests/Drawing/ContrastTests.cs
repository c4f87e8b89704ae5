using System.Globalization;
using HandsFree.Pages.Drawing;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Drawing;

/// <summary>Contrast by W3C, Web Content Accessibility Guidelines 2.2 (2023), "relative luminance" and "contrast ratio".</summary>
public sealed class ContrastTests
{
    private static double Luminance(string ink)
    {
        double Part(int from)
        {
            double share = int.Parse(ink.AsSpan(from, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Part(1)) + (0.7152 * Part(3)) + (0.0722 * Part(5));
    }

    private static double Contrast(string one, string other)
    {
        double[] both = [Luminance(one), Luminance(other)];
        return (both.Max() + 0.05) / (both.Min() + 0.05);
    }

    // 21 to 1 is the greatest there is (WCAG 2.2, note 1 to "contrast ratio"); #767676 is the lightest grey with 4.5 on white (from memory).
    [Fact]
    public void The_formula_gives_what_is_known()
    {
        Contrast("#000000", "#ffffff").ShouldBe(21, 0.001);
        Contrast("#767676", "#ffffff").ShouldBe(4.54, 0.005);
        Contrast("#777777", "#ffffff").ShouldBe(4.48, 0.005);
    }

    // Success criterion 1.4.6 (level AAA): 7 to 1 for text. 1.4.11: 3 to 1 for graphics that carry something.
    [Theory]
    [InlineData(Ink.Black, Ink.White, 7)]
    [InlineData(Ink.Grey, Ink.White, 7)]
    [InlineData(Ink.Black, Ink.Band, 7)]
    [InlineData(Ink.Line, Ink.White, 4.5)]
    [InlineData(Ink.Line, Ink.Band, 3)]
    public void An_ink_is_dark_enough_on_its_ground(string ink, string ground, double least) => Contrast(ink, ground).ShouldBeGreaterThanOrEqualTo(least);

    [Fact]
    public void Every_ink_is_a_grey_so_that_black_and_white_loses_nothing()
    {
        foreach (string ink in new[] { Ink.Black, Ink.Grey, Ink.Line, Ink.Band, Ink.Rule, Ink.White })
        {
            (ink[1..3], ink[3..5]).ShouldBe((ink[3..5], ink[5..7]), ink);
        }
    }
}
