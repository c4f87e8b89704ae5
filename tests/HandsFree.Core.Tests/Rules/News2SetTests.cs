using HandsFree.Core.Rules.Scores;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class News2SetTests
{
    private static readonly DateOnly Day = new(2026, 3, 10);

    /// <summary>W-03, in Fahrenheit: 100.8 F is 38.2 C.</summary>
    [Fact]
    public void A_whole_set_of_an_adult_scores() =>
        Score("respirations 22;oxygen 94 air;bp 108/70;pulse 96;temperature 100.8 F", "", true).ShouldNotBeNull().Total.ShouldBe(6);

    /// <summary>W-06 and W-08: scale 2 only where 88 to 92 % was ordered.</summary>
    [Theory]
    [InlineData("ordered oxygen 88-92", 0)]
    [InlineData("ordered oxygen 87-92", 3)]
    [InlineData("", 3)]
    public void Scale_two_needs_the_order(string resident, int total) =>
        Score("respirations 20;oxygen 90 air;bp 122/80;pulse 84;temperature 36.9 C", resident, true).ShouldNotBeNull().Total.ShouldBe(total);

    /// <summary>W-07: usual oxygen counts as oxygen where nothing else was said.</summary>
    [Fact]
    public void Usual_oxygen_counts_where_none_was_said() =>
        Score("respirations 20;oxygen 95;bp 122/80;pulse 84;temperature 36.9 C", "ordered oxygen 88-92;litres 2", true).ShouldNotBeNull().Total.ShouldBe(4);

    [Fact]
    public void Without_the_consciousness_there_is_no_total_and_it_is_named_as_missing()
    {
        var parameters = News2Set.Parameters([Notation.Reading("pulse 84")], Notation.Resident(""), null, Day).ShouldNotBeNull();

        News2.Of(parameters).ShouldBeNull();
        News2Set.Missing(parameters).ShouldBe(["respirations", "oxygen saturation", "blood pressure", "consciousness", "temperature"]);
    }

    [Theory]
    [InlineData(2010, 3, 10, true)]
    [InlineData(2010, 3, 11, false)]
    public void It_is_for_adults(int year, int month, int day, bool adult) =>
        (News2Set.Parameters([], Notation.Resident("") with { Born = new(year, month, day) }, true, Day) is not null).ShouldBe(adult);

    private static News2? Score(string set, string resident, bool? alert) =>
        News2.Of(News2Set.Parameters([.. set.Split(';').Select(Notation.Reading)], Notation.Resident(resident), alert, Day).ShouldNotBeNull());
}
