using HandsFree.Language.Grammars;
using HandsFree.Speech.Neural;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Neural;

public sealed class WrittenAutomataTests
{
    private static readonly Grammar Counts = Load("count");
    private static readonly Grammar Questions = Load("handover");

    [Fact]
    public void A_grammar_that_comes_again_is_not_made_again()
    {
        WrittenAutomata automata = new(Tokens());
        WrittenAutomaton counts = automata.Of(Counts);
        automata.Of(Questions);
        automata.Of(Counts).ShouldBeSameAs(counts);
    }

    [Fact]
    public void Beyond_the_bound_the_one_that_was_not_used_for_longest_is_forgotten()
    {
        Vocabulary tokens = Tokens();
        WrittenAutomaton large = new WrittenAutomata(tokens).Of(Counts);
        large.Tokens(large.Start);
        WrittenAutomata automata = new(tokens, large.Size + 1);
        WrittenAutomaton counts = automata.Of(Counts);
        counts.Tokens(counts.Start);
        WrittenAutomaton questions = automata.Of(Questions);
        questions.Tokens(questions.Start);
        automata.Of(Questions).ShouldBeSameAs(questions);
        automata.Count.ShouldBe(1);
        automata.Of(Counts).ShouldNotBeSameAs(counts);
    }

    private static Vocabulary Tokens() => Vocabulary.Read(Path.Combine(NeuralFiles.Folder, "tokenizer.bin"));

    private static Grammar Load(string state) => Grammar.Load(Path.Combine(Shared.Repository, "grammars", state + ".jsgf"));
}
