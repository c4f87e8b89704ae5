using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class SpokenTextTests
{
    [Theory]
    [InlineData("1 1 8 over 7 6", "one, one, eight over seven, six")]
    [InlineData("Pulse 7 2. Is that right?", "Pulse seven, two. Is that right?")]
    [InlineData("Temperature 9 8 point 6", "Temperature nine, eight point six")]
    [InlineData("2 2 2", "two, two, two")]
    [InlineData("0, 0", "zero, zero")]
    public void Digits_that_stand_alone_are_said_one_by_one(string shown, string spoken) => SpokenText.ForSpeech(shown).ShouldBe(spoken);

    [Theory]
    [InlineData("Room 12 bed B")]
    [InlineData("98.6 degrees")]
    [InlineData("saved")]
    public void Everything_else_is_left_to_the_voice(string shown) => SpokenText.ForSpeech(shown).ShouldBe(shown);

    [Fact]
    public void Blanks_and_line_ends_are_one_blank() => SpokenText.ForSpeech("  pulse\n 7  \t2 ").ShouldBe("pulse seven, two");

    [Fact]
    public void Nothing_stays_nothing() => SpokenText.ForSpeech(" ").ShouldBe("");
}
