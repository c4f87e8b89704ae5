using HandsFree.Core.Hearings;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Hearings;

public sealed class TwoHearingsTests
{
    [Fact]
    public void Odds_multiply()
    {
        // Bayes' rule by hand: 15 to 50 is 3:1 and 2:1, together 6:1; none 0.2 * 0.1.
        var both = TwoHearings.Together([P(15, 0.6), P(50, 0.2)], [P(15, 0.6), P(50, 0.3)], []);
        (both[0].Probability / both[1].Probability).ShouldBe(6, 1e-9);
        both[0].Probability.ShouldBe(0.36 / (0.36 + 0.06 + 0.02), 1e-9);
        TwoHearings.Margin(both)!.Value.ShouldBe(Math.Log(6), 1e-9);
    }

    [Fact]
    public void Two_weak_hearings_of_the_same_value_make_a_strong_one() =>
        TwoHearings.Together([P(72, 0.8)], [P(72, 0.8)], [])[0].Probability.ShouldBeGreaterThan(0.9);

    [Fact]
    public void Two_sure_hearings_of_different_values_are_a_doubt()
    {
        var both = TwoHearings.Together([P(15, 0.97)], [P(50, 0.97)], []);
        TwoHearings.Margin(both)!.Value.ShouldBe(0, 1e-9);
        both[0].Probability.ShouldBeLessThan(0.5);
    }

    [Fact]
    public void A_value_that_was_refused_is_gone_and_its_runner_up_takes_its_place()
    {
        var both = TwoHearings.Together([P(15, 0.8), P(50, 0.15)], [P(15, 0.6), P(50, 0.35)], [15]);
        both.ShouldHaveSingleItem().Value.ShouldBe(50);
        both[0].Probability.ShouldBe(0.15 * 0.35 / ((0.15 * 0.35) + (0.05 * 0.05)), 1e-9);
    }

    [Fact]
    public void Nothing_left_but_the_refused_value_is_none_of_these() =>
        TwoHearings.Together([P(15, 0.8)], [P(15, 0.9)], [15]).ShouldBeEmpty();

    [Fact]
    public void What_a_hearing_does_not_list_has_there_no_more_than_the_least_of_what_it_lists()
    {
        // By hand: the first hearing lists 15 (0.25) and 50 (0.05), the rest of 0.7 is none of these. 40 is not on its list: at most 0.05, not
        // 0.7. w(40) = 0.05 * 0.6, w(15) = 0.25 * 0.3, w(50) = 0.05 * 0.1 (what the second lacks, none, bounds it), w(none) = 0.7 * 0.1.
        var both = TwoHearings.Together([P(15, 0.25), P(50, 0.05)], [P(40, 0.6), P(15, 0.3)], []);

        both[0].Value.ShouldBe(15);
        both[0].Probability.ShouldBe(0.075 / (0.075 + 0.03 + 0.005 + 0.07), 1e-9);
        both.First(p => p.Value == 40).Probability.ShouldBe(0.03 / (0.075 + 0.03 + 0.005 + 0.07), 1e-9);
    }

    [Fact]
    public void A_hearing_of_nothing_changes_nothing()
    {
        var alone = TwoHearings.Together([P(15, 0.8), P(50, 0.1)], [], []);
        alone[0].Probability.ShouldBe(0.8, 1e-9);
        alone[1].Probability.ShouldBe(0.1, 1e-9);
    }

    [Fact]
    public void A_value_of_one_hearing_only_is_never_surer_than_in_that_hearing()
    {
        var random = new Random(1);
        for (int i = 0; i < 1000; i++)
        {
            double known = random.NextDouble();
            double other = random.NextDouble();
            var both = TwoHearings.Together([P(1, other)], [P(2, known)], []);
            both.First(p => p.Value == 2).Probability.ShouldBeLessThanOrEqualTo(known + 1e-9);
        }
    }

    [Fact]
    public void It_adds_up_does_not_depend_on_the_order_and_follows_its_evidence()
    {
        var random = new Random(2);
        for (int i = 0; i < 1000; i++)
        {
            Possible<int>[] first = Some(random);
            Possible<int>[] second = Some(random);
            var both = TwoHearings.Together(first, second, []);
            both.Sum(p => p.Probability).ShouldBeLessThanOrEqualTo(1 + 1e-9);
            both.Select(p => p.Probability).ShouldBe(both.Select(p => p.Probability).OrderDescending());
            var turned = TwoHearings.Together(second, first, []).ToDictionary(p => p.Value, p => p.Probability);
            both.ShouldAllBe(p => Math.Abs(turned[p.Value] - p.Probability) < 1e-9);

            // More for one value, less for "none of these": the value gets no less likely.
            Possible<int>[] surer = [first[0] with { Probability = first[0].Probability + (0.5 * (1 - first.Sum(p => p.Probability))) }, .. first[1..]];
            TwoHearings.Together(surer, second, []).First(p => p.Value == first[0].Value).Probability
                .ShouldBeGreaterThanOrEqualTo(both.First(p => p.Value == first[0].Value).Probability - 1e-9);
        }
    }

    [Fact]
    public void Impossible_probabilities_are_told()
    {
        Should.Throw<ArgumentException>(() => TwoHearings.Together([P(1, 1.2)], [], [])).Message.ShouldContain("1 has the probability 1.2");
        Should.Throw<ArgumentException>(() => TwoHearings.Together([P(1, double.NaN)], [], []));
        Should.Throw<ArgumentException>(() => TwoHearings.Together([], [P(1, 0.6), P(2, 0.6)], [])).Message.ShouldContain("more than 1");
        Should.Throw<ArgumentException>(() => TwoHearings.Together([], [P(1, 0.4), P(1, 0.4)], [])).Message.ShouldContain("twice");
    }

    private static Possible<int> P(int value, double probability) => new(value, probability);

    /// <summary>Values 1 to 4 in an order by chance, with probabilities by chance.</summary>
    private static Possible<int>[] Some(Random random)
    {
        int[] values = [1, 2, 3, 4];
        random.Shuffle(values);
        double[] shares = [.. values.Select(_ => random.NextDouble())];
        double sum = shares.Sum() + random.NextDouble();
        return [.. values.Zip(shares, (v, s) => P(v, s / sum)).Take(1 + random.Next(4))];
    }
}
