using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
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
    public void A_sentence_with_a_word_that_it_has_not_learned_is_none_of_these_and_the_others_are_heard()
    {
        Grammar mixed = Grammar.Parse(
            "#JSGF V1.0; grammar mixed; public <s> = pulse seventy two {72} | pulse seventy green {'green'} | seventy two yellow {'yellow'};", "mixed.jsgf");
        using IRecognizer engine = Start();

        engine.Hear(Spoken.ByFlite("pulse seventy two"), mixed).Best!.Meaning.ShouldBe(new SemanticNumber(72));
        engine.Hear(Spoken.ByFlite("pulse seventy green"), mixed).Outcome.ShouldBe(HearingOutcome.NoReading);
        engine.Hear(Spoken.ByFlite("seventy two yellow"), mixed).Outcome.ShouldNotBe(HearingOutcome.Heard);
    }

    [Fact]
    public void A_grammar_without_one_learned_word_hears_nothing_of_its_own()
    {
        Grammar colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green {1} | yellow {2};", "colours.jsgf");
        using IRecognizer engine = Start();

        engine.Prepare(colours);

        engine.Hear(Spoken.ByFlite("yellow"), colours).Outcome.ShouldBe(HearingOutcome.NoReading);
    }

    /// <summary>A new word of the grammars shows up here: it is heard only after a new training.</summary>
    [Fact]
    public void Words_of_the_grammars_that_it_has_not_learned()
    {
        using SmallRecognizer engine = SmallRecognizer.Open();
        IEnumerable<Grammar> all = ((string[])["readings", "value", "confirmation", "identity", "count", "handover"])
            .Select(name => Grammar.Load(Path.Combine(Shared.Repository, "grammars", name + ".jsgf")));

        Golden.Match(string.Join('\n', engine.NotLearned(all)));
    }
}
