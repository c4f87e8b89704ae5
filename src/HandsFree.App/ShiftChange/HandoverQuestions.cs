using HandsFree.App.Hear;
using HandsFree.Core.Meanings;
using HandsFree.Language.Grammars;
using HandsFree.Language.Help;
using HandsFree.Language.Sentences;

namespace HandsFree.App.ShiftChange;

/// <summary>Typed questions of the handover, understood by the grammar that hears the spoken ones.</summary>
internal sealed class HandoverQuestions(GrammarShelf shelf)
{
    private const int MostExamples = 30;

    /// <summary>The grammar of the questions.</summary>
    public Grammar Grammar { get; } = shelf.Of("handover");

    /// <summary>What can be asked, for a person.</summary>
    public string Options => string.Join(", ", Examples.Of(Grammar, MostExamples));

    /// <summary>What a question means: a query, a command, or null where it is none of ours.</summary>
    /// <param name="text">As typed; a number may stand in figures.</param>
    public Meaning? Understand(string text) =>
        Matcher.Match(Grammar, TypedWords.Spoken(text)) is [{ } value] ? MeaningMap.From(value) : null;
}
