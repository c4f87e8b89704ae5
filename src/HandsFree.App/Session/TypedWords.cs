using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.App.Session;

/// <summary>What is typed has the meaning of what is spoken: the same sentences under the same grammar, with figures for numbers
/// ("pulse 72", "118/76", "0303").</summary>
internal static class TypedWords
{
    private static readonly string[] Digits = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>The event; <see cref="DialogueEvent.NotAReading"/> where the grammar has no such sentence.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="grammar">The grammar in force; null where nothing is listened for.</param>
    /// <param name="at">Now.</param>
    /// <param name="weightUnit">The home's unit for a weight that was typed without one.</param>
    public static DialogueEvent Understand(string text, Grammar? grammar, DateTimeOffset at, WeightUnit weightUnit)
    {
        string words = TypedShort.Written(Spoken(text));
        foreach (string said in new[] { words, TypedShort.WithoutFillers(words) }.Distinct())
        {
            Meaning? meaning = grammar is null
                ? null
                : Matcher.Match(grammar, said).Select(v => MeaningMap.From(v, weightUnit)).FirstOrDefault(m => m is not null);
            if (meaning is not null)
            {
                return new DialogueEvent.Utterance(at, meaning, said) { Typed = true };
            }
        }

        return new DialogueEvent.NotAReading(at) { Typed = true };
    }

    /// <summary>Figures as digit words: "118/76" as "one one eight over seven six".</summary>
    public static string Spoken(string text) => string.Join(' ', string.Concat(text.Select(Spoken))
        .Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static string Spoken(char letter) => letter switch
    {
        >= '0' and <= '9' => $" {Digits[letter - '0']} ",
        '.' => " point ",
        '/' => " over ",
        '%' => " percent ",
        ',' or ';' or '!' or '?' or ':' => " ",
        _ => letter.ToString(),
    };
}
