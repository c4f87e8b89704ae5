using HandsFree.Core.Dialogue;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

public sealed class TogetherTests
{
    private static readonly Reading Fifty = Pulse(50);

    [Fact]
    public void All_values_of_the_sign_that_were_possible_count()
    {
        DialogueEvent.Utterance said = Said(0.7, (Pulse(50), 0.7), (Pulse(15), 0.2), (Pulse(60), 0.05));
        Together.Of(said, Fifty).ShouldBe([new(Fifty.Value, 0.7), new(Pulse(15).Value, 0.2), new(Pulse(60).Value, 0.05)]);
    }

    [Fact]
    public void A_third_place_in_both_hearings_is_what_was_said()
    {
        // By hand: 0.4 * 0.01, 0.35 * 0.01 and 0.2 * 0.9: the last is most of it.
        var first = Together.Of(Said(0.4, (Pulse(50), 0.4), (Pulse(60), 0.35), (Pulse(15), 0.2)), Fifty);
        IReadOnlyList<Possible<Quantity>> both = TwoHearings.Together(first, [new(Pulse(15).Value, 0.9), new(Pulse(50).Value, 0.01)], []);
        both[0].Value.ShouldBe(Pulse(15).Value);
    }

    [Fact]
    public void Without_alternatives_the_next_counts_by_its_margin()
    {
        DialogueEvent.Utterance said = Said(0.6) with { RunnerUp = new Meaning.ReadingSaid(Pulse(15)), Margin = Math.Log(2) };
        Together.Of(said, Fifty)[1].Probability.ShouldBe(0.3, 1e-12);
    }

    private static DialogueEvent.Utterance Said(double probability, params (Reading Reading, double Probability)[] all) =>
        new(DateTimeOffset.UnixEpoch, new Meaning.ReadingSaid(Fifty), "pulse fifty")
        {
            Probability = probability,
            Alternatives = [.. all.Select(a => new Possible<Meaning>(new Meaning.ReadingSaid(a.Reading), a.Probability))],
        };

    private static Reading Pulse(int value) => new(HeartRate.FromPerMinute(value), Circumstances.Unsaid);
}
