using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Speech.Words;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Contract;

public sealed class WordsContract : RecognizerContract
{
    private static readonly Grammar Readings = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "readings.jsgf"));
    private static readonly Grammar Colours = Grammar.Parse("#JSGF V1.0; grammar colours; public <colour> = green {1} | yellow {2};", "colours.jsgf");

    protected override Grammar Fitting => Readings;

    protected override Grammar Unlike { get; } = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "handover.jsgf"));

    protected override string Meaning => """{"kind": "pulse", "value": 72}""";

    protected override IRecognizer Start() => WordsRecognizer.Open();

    protected override float[] Clip() => Spoken.ByFlite("pulse seventy two");

    /// <summary>A word of a grammar that the network does not know would make its sentences unheard without a word about it. A new word must be
    /// one of src/HandsFree.Speech/Words/Data/words.txt (or of one sound with one of them: words-same.tsv), or be trained for.</summary>
    [Fact]
    public void Every_word_of_every_grammar_is_among_the_words_of_the_network()
    {
        string grammars = Path.Combine(Shared.Repository, "grammars");
        string[] states = [.. Directory.GetFiles(grammars, "*.sentences.txt").Select(file => Path.GetFileName(file).Split('.')[0]).Order(StringComparer.Ordinal)];
        states.Length.ShouldBeGreaterThan(5);
        using WordsRecognizer engine = WordsRecognizer.Open();

        string[] unknown = [.. states
            .SelectMany(state => Grammars(Path.Combine(grammars, state + ".jsgf")).Select(grammar => (State: state, Words: engine.NotLearned([grammar]))))
            .Where(missing => missing.Words.Count > 0)
            .Select(missing => $"{missing.State}.jsgf: {string.Join(", ", missing.Words)}")];

        unknown.ShouldBeEmpty($"the engine words can't hear these: {string.Join("; ", unknown)}. Say it with words of src/HandsFree.Speech/Words/Data/words.txt, or train the network for them");
    }

    [Fact]
    public void A_word_that_the_network_lacks_is_named()
    {
        using WordsRecognizer engine = WordsRecognizer.Open();

        engine.NotLearned([Colours, Readings]).ShouldBe(["green", "yellow"]);
    }

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

    /// <summary>The network knows more words than any grammar: one of them in a sentence speaks against every sentence of the grammar.</summary>
    [Theory]
    [InlineData("pulse seventy two wheelchair")]
    [InlineData("breakfast pulse seventy two")]
    public void A_known_word_that_the_grammar_lacks_speaks_for_none_of_these(string words)
    {
        Grammar pulses = Grammar.Parse("#JSGF V1.0; grammar pulses; public <s> = pulse seventy two {72} | pulse seventy three {73};", "pulses.jsgf");
        using IRecognizer engine = Start();

        Hearing hearing = engine.Hear(Spoken.ByFlite(words), pulses);

        hearing.Outcome.ShouldBe(HearingOutcome.NoReading, hearing.Transcript);
    }

    [Fact]
    public void A_grammar_without_one_known_word_is_refused_by_name_and_never_heard()
    {
        using IRecognizer engine = Start();

        Should.Throw<GrammarException>(() => engine.Prepare(Colours)).Message.ShouldContain("green, yellow");

        engine.Hear(Spoken.ByFlite("yellow"), Colours).Outcome.ShouldBe(HearingOutcome.NoReading);
    }

    /// <summary>"too" is labelled "to": what comes out are still the grammar's own words.</summary>
    [Fact]
    public void A_word_of_one_sound_with_a_label_is_heard_and_written_as_the_grammar_writes_it()
    {
        Grammar spelled = Grammar.Parse("#JSGF V1.0; grammar spelled; public <s> = room o five {5} | too high {1};", "spelled.jsgf");
        using IRecognizer engine = Start();

        engine.Hear(Spoken.ByFlite("too high"), spelled).Best!.Words.ShouldBe("too high");
        engine.Hear(Spoken.ByFlite("room oh five"), spelled).Best!.Words.ShouldBe("room o five");
    }

    /// <summary>The file's one public rule, or where it has none all its rules: each is listened for in a state of its own.</summary>
    private static IEnumerable<Grammar> Grammars(string file)
    {
        string[] own = [.. File.ReadLines(file).Where(line => line.StartsWith('<')).Select(line => line[1..line.IndexOf('>', StringComparison.Ordinal)])];
        return File.ReadLines(file).Any(line => line.StartsWith("public", StringComparison.Ordinal)) ? [Grammar.Load(file)] : own.Select(rule => Grammar.Load(file, rule));
    }
}
