using System.Globalization;
using HandsFree.Core.Rules.Scores;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class News2Tests
{
    private const string File = "news2.tsv";

    public static IEnumerable<TheoryDataRow<string>> Examples() => Table.Ids(File);

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_set_scores_as_the_chart_of_the_Royal_College_of_Physicians_says(string id)
    {
        var row = Table.Row(File, id);

        var score = News2.Of(Parameters(row)).ShouldNotBeNull();

        string.Join(' ', score.Components).ShouldBe(row["components"]);
        score.Total.ShouldBe(Whole(row["total"]));
        score.Class.ShouldBe(row["class"]);
    }

    [Theory]
    [InlineData("95.0", 3)]
    [InlineData("95.1", 1)]
    [InlineData("96.8", 1)]
    [InlineData("96.9", 0)]
    [InlineData("100.4", 0)]
    [InlineData("100.5", 1)]
    [InlineData("102.2", 1)]
    [InlineData("102.3", 2)]
    public void Fahrenheit_is_converted_and_rounded_to_a_tenth_before_it_is_scored(string fahrenheit, int points)
    {
        decimal celsius = (decimal.Parse(fahrenheit, CultureInfo.InvariantCulture) - 32) * 5 / 9;

        News2.Of(Parameters(Table.Row(File, "W-01")) with { Celsius = celsius })!.Components[^1].ShouldBe(points);
    }

    [Theory]
    [InlineData(83, 3)]
    [InlineData(84, 2)]
    [InlineData(86, 1)]
    [InlineData(88, 0)]
    [InlineData(92, 0)]
    [InlineData(93, 1)]
    [InlineData(95, 2)]
    [InlineData(97, 3)]
    public void Scale_two_on_oxygen_has_its_own_bands(int saturation, int points) =>
        News2.Of(Parameters(Table.Row(File, "W-07")) with { OxygenSaturation = saturation })!.Components[1].ShouldBe(points);

    [Fact]
    public void A_missing_parameter_gives_no_total()
    {
        var whole = Parameters(Table.Row(File, "W-01"));

        News2.Of(whole with { Alert = null }).ShouldBeNull();
        News2.Of(whole with { Celsius = null }).ShouldBeNull();
        News2.Of(whole with { Respirations = null }).ShouldBeNull();
    }

    private static News2Parameters Parameters(IReadOnlyDictionary<string, string> row) => new(
        Whole(row["respirations"]),
        Whole(row["saturation"]),
        row["oxygen"] == "yes",
        Whole(row["systolic"]),
        Whole(row["pulse"]),
        row["consciousness"] == "A",
        decimal.Parse(row["celsius"], CultureInfo.InvariantCulture),
        row["scale"] == "2");

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
