using HandsFree.Speech.Sphinx;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Sphinx;

public sealed class SphinxEvidenceTests
{
    [Fact]
    public void Without_a_list_the_best_way_stands_alone() =>
        new SphinxEvidence("pulse eighty", [], 3).Weighted(0.01, 90).ShouldBe([new("pulse eighty", 0)]);

    [Fact]
    public void Another_way_weighs_less_the_further_it_falls_behind() =>
        new SphinxEvidence("pulse eighty", [new("pulse eighty", -3000), new("pulse eighteen", -3200)], 3).Weighted(0.01, 90)
            .ShouldBe([new("pulse eighty", 0), new("pulse eighteen", -2)]);

    [Fact]
    public void A_word_more_costs_what_a_word_costs() =>
        new SphinxEvidence("pulse eighty", [new("pulse eighty", -3000), new("pulse eighty two", -3000)], 3).Weighted(0.01, 90)[1].LogWeight
            .ShouldBe(-0.9, 1e-9);

    [Fact]
    public void A_way_that_the_list_puts_before_the_best_way_counts_half_as_much() =>
        new SphinxEvidence("pulse eighty", [new("pulse eighteen", -2000), new("pulse eighty", -3000)], 3).Weighted(0.01, 90)
            .ShouldBe([new("pulse eighty", 0), new("pulse eighteen", -Math.Log(2))]);

    [Fact]
    public void A_best_way_that_the_list_lacks_is_taken_to_be_as_good_as_the_first_of_the_list() =>
        new SphinxEvidence("pulse eighty", [new("pulse eighteen", -2000), new("pulse nine", -2100)], 3).Weighted(0.01, 90)[2].LogWeight
            .ShouldBe(-1, 1e-9);
}
