using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Language.Sentences;

namespace HandsFree.App.Demo.Script;

/// <summary>What the aide knows about words: what a clip means, how it is read back, how its number is said digit by digit.</summary>
internal sealed class AideMind(ListeningGrammars grammars)
{
    private static readonly HashSet<string> DigitWords =
        ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "point", "over"];

    private static readonly int?[] StandingMinutes = [null, 1, 2, 3, 4];

    private static readonly HashSet<string> NumberWordsAtTheStart =
    [
        "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen",
        "sixteen", "seventeen", "eighteen", "nineteen", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety", "a",
    ];

    /// <summary>The reading that a text says.</summary>
    /// <exception cref="InvalidDataException">It says none; the script is wrong.</exception>
    public Reading Reading(string text) =>
        Meaning(text) is Meaning.ReadingSaid said ? said.Reading : throw new InvalidDataException($"manifest.json: \"{text}\" is no reading");

    /// <summary>The number of a reading in the words of its text: "pulse ninety four" gives "ninety four".</summary>
    public static string NumberWords(string text) => string.Join(' ', Matcher.WordsOf(text).SkipWhile(w => !NumberWordsAtTheStart.Contains(w)));

    /// <summary>The number alone, digit by digit: of what was counted where it was counted.</summary>
    public static string Digits(Reading reading)
    {
        string number = ReadBackTexts.Of(reading).Split(", ")[1];
        return string.Join(' ', number.Split(' ').TakeWhile(DigitWords.Contains));
    }

    /// <summary>Whether a prompt reads this back. The minutes of standing are the program's own clock; she does not say them.</summary>
    public static bool IsReadBackOf(string prompt, Reading reading) => StandingMinutes.Any(minutes =>
        prompt.Contains(Heard(reading with { How = reading.How with { MinutesStanding = minutes } }) + ".", StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether a prompt reads back the right number, and more about it than was said.</summary>
    public static bool AddsToReadBackOf(string prompt, Reading reading) =>
        prompt.Contains(Heard(reading with { How = Circumstances.Unsaid }) + ",", StringComparison.OrdinalIgnoreCase)
        && !IsReadBackOf(prompt, reading);

    // The usual unit and room air are not said.
    private static string Heard(Reading reading) => ReadBackTexts.InShort(
        reading with { How = reading.How with { Oxygen = reading.How.Oxygen is { IsRoomAir: true } ? null : reading.How.Oxygen } }, Core.Quantities.WeightUnit.Pounds);

    private Meaning? Meaning(string text)
    {
        var grammar = grammars.For(new Listening(ListeningKind.Readings))!;
        return Matcher.Match(grammar, text) is [var only] ? MeaningMap.From(only) : null;
    }
}
