using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>The oracle itself, held against forms written by hand.</summary>
public sealed class SpokenNumberTests
{
    [Fact]
    public void A_hundred_and_eighteen_is_said_in_six_ways() => SpokenNumber.Forms(118).Order(StringComparer.Ordinal).ShouldBe([
        "a hundred and eighteen", "a hundred eighteen", "one eighteen", "one hundred and eighteen", "one hundred eighteen", "one one eight"]);

    [Fact]
    public void A_hundred_and_eight_has_its_zero_in_two_ways() => SpokenNumber.Forms(108).Order(StringComparer.Ordinal).ShouldBe([
        "a hundred and eight", "a hundred eight", "one hundred and eight", "one hundred eight", "one oh eight", "one zero eight"]);

    [Fact]
    public void A_temperature_of_98_6_is_said_with_and_without_point()
    {
        SpokenNumber.PointForms(98.6m).ShouldBe(["ninety eight point six", "nine eight point six"]);
        SpokenNumber.ShortForms(98.6m).ShouldBe(["nine eight six", "ninety eight six"]);
    }

    [Fact]
    public void Forty_point_five_has_no_short_form_with_tens() => SpokenNumber.ShortForms(40.5m).ShouldBe(["four zero five", "four oh five"]);
}
