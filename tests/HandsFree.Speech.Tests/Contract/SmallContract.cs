using HandsFree.Language.Grammars;
using HandsFree.Speech.Small;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Contract;

public sealed class SmallContract : RecognizerContract
{
    private static readonly Grammar Readings = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "readings.jsgf"));
    private static readonly Grammar Queries = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "handover.jsgf"));

    protected override Grammar Fitting => Readings;

    protected override Grammar Unlike => Queries;

    protected override string Meaning => """{"kind": "pulse", "value": 72}""";

    protected override IRecognizer Start() => SmallRecognizer.Open();

    protected override float[] Clip() => Spoken.ByFlite("pulse seventy two");

    [Fact]
    public void Words_that_it_has_not_learned_are_named_and_the_others_are_heard()
    {
        Grammar colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green | yellow | one;", "colours.jsgf");
        using SmallRecognizer engine = SmallRecognizer.Open();
        engine.Prepare(colours);
        engine.Unlearned(colours).ShouldBe(["green", "yellow"]);
        engine.Hear(Spoken.ByFlite("one"), colours).Best?.Words.ShouldBe("one");
    }

    // They are not heard until it is trained again; a new word of the grammars shows up here.
    [Theory]
    [InlineData("readings", null, "active dizzy fell hand isolated isolation machine posture private resting test")]
    [InlineData("recheck", "pulse", "active dizzy fell hand isolated isolation machine posture private resting test")]
    [InlineData("value", null, "isolated isolation")]
    [InlineData("confirmation", null, "")]
    [InlineData("identity", null, "machine")]
    [InlineData("count", null, "isolated isolation")]
    [InlineData("handover", null, "")]
    public void What_it_has_not_learned_of_the_grammars(string state, string? rule, string words)
    {
        using SmallRecognizer engine = SmallRecognizer.Open();
        Grammar grammar = Grammar.Load(Path.Combine(Shared.Repository, "grammars", state + ".jsgf"), rule);
        engine.Unlearned(grammar).ShouldBe(words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
