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
    public void A_word_that_it_has_not_learned_is_named()
    {
        Grammar colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green | yellow | one;", "colours.jsgf");
        using IRecognizer engine = Start();

        string message = Should.Throw<GrammarException>(() => engine.Prepare(colours)).Message;

        message.ShouldContain("colours");
        message.ShouldContain("\"green\", \"yellow\"");
        message.ShouldNotContain("\"one\"");
    }

    [Theory]
    [InlineData("readings", null)]
    [InlineData("recheck", "pulse")]
    [InlineData("value", null)]
    [InlineData("confirmation", null)]
    [InlineData("identity", null)]
    [InlineData("count", null)]
    [InlineData("handover", null)]
    public void It_has_learned_every_word_of_the_grammars(string state, string? rule)
    {
        using IRecognizer engine = Start();
        Should.NotThrow(() => engine.Prepare(Grammar.Load(Path.Combine(Shared.Repository, "grammars", state + ".jsgf"), rule)));
    }
}
