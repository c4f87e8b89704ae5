using HandsFree.Pages.Drawing;
using HandsFree.Pages.Html;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Drawing;

public sealed class MarkTests
{
    private static string Drawn(Mark mark)
    {
        SvgCanvas canvas = new(10, 10);
        Marks.Draw(canvas, mark, new(5, 5), 8);
        return canvas.Element("mark", null);
    }

    [Fact]
    public void Each_mark_has_a_shape_and_a_word_of_its_own()
    {
        Mark[] all = Enum.GetValues<Mark>();

        all.Select(Drawn).ShouldBeUnique();
        all.Select(Marks.Word).ShouldBeUnique();
    }

    // The shapes alone tell them apart: no two differ in ink only.
    [Fact]
    public void Shapes_differ_in_outline_or_in_what_is_filled_and_use_black_and_white_alone()
    {
        foreach (Mark mark in Enum.GetValues<Mark>())
        {
            string drawn = Drawn(mark);
            System.Text.RegularExpressions.Regex.Matches(drawn, "#[0-9a-f]{6}").Select(m => m.Value).Distinct().ShouldBeSubsetOf([Ink.Black, Ink.White], mark.ToString());
        }
    }
}
