using System.Reflection;
using System.Text;
using HandsFree.App.Hear;
using HandsFree.Language.Help;

namespace HandsFree.App.Help;

/// <summary>The pages of "handsfree help".</summary>
internal static class HelpTopics
{
    /// <summary>The topic that is made from the grammars.</summary>
    public const string Words = "words";

    /// <summary>The topic that is also a page for paper.</summary>
    public const string Card = "card";

    private const int MostSentences = 30;

    /// <summary>Each topic with what it is about, in the order of the list.</summary>
    public static IReadOnlyList<(string Topic, string About)> All { get; } =
    [
        ("round", "a round, from the first resident to the last"),
        (Words, "what can be said"),
        ("reports", "what the nurse must hear, and the change of shift"),
        ("home", "residents, settings, people"),
        ("backup", "a copy that is safe, and another machine"),
        ("trouble", "when something does not work"),
        ("year", "a year with it, for the supervisor"),
        (Card, "two pages to print for the pocket"),
    ];

    /// <summary>What can be said, state by state: the examples that the grammars themselves give.</summary>
    private static readonly (string State, string Heading)[] States =
    [
        ("identity", "Who it is"),
        ("readings", "At the bed"),
        ("confirmation", "After a read-back"),
        ("count", "After a count"),
        ("handover", "At the change of shift"),
    ];

    /// <summary>The text of a topic of <see cref="All"/>.</summary>
    public static string Text(string topic, GrammarShelf grammars) => topic switch
    {
        Words => OfWords(grammars),
        Card => AideCard.Text(),
        _ => Resource(topic),
    };

    private static string OfWords(GrammarShelf grammars)
    {
        StringBuilder text = new("WHAT CAN BE SAID\n\nSay it, or type it: it means the same. Numbers as you like: \"seventy two\" or \"seven two\".\n");
        foreach ((string state, string heading) in States)
        {
            text.Append($"\n{heading}\n");
            foreach (string sentence in Examples.Of(grammars.Of(state), MostSentences))
            {
                text.Append($"  {sentence}\n");
            }
        }

        return text.Append("\n\"Options\" says what can be said at any moment.\n").ToString();
    }

    private static string Resource(string topic)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"help-{topic}.txt")
            ?? throw new InvalidOperationException($"the program carries no help on {topic}");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
