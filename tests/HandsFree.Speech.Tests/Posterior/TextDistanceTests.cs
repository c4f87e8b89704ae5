using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Posterior;

public sealed class TextDistanceTests
{
    [Theory]
    [InlineData("kitten", "sitting", 3.0 / 7)] // the textbook's example: three edits
    [InlineData("Pulse 72.", "pulse 72", 0)]
    [InlineData("1-18", "118", 0)]
    [InlineData("", "no", 1)]
    [InlineData("", ".", 0)]
    [InlineData("abc", "xyz", 1)]
    public void Edits_of_letters_and_figures_over_the_longer_length(string a, string b, double distance)
    {
        TextDistance.Of(a, b).ShouldBe(distance, 1e-12);
        TextDistance.Of(b, a).ShouldBe(distance, 1e-12);
    }
}
