using HandsFree.App.Homes;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Language.Sentences;

namespace HandsFree.App.Hear;

/// <summary>A typed reading, understood by the grammar that hears spoken ones.</summary>
internal static class TypedReading
{
    /// <summary>The reading, or one line that says why the text is none.</summary>
    public static (Reading? Reading, string? Error) Of(string text, Home home, GrammarShelf shelf)
    {
        Meaning? meaning = Matcher.Match(shelf.Of("readings"), TypedWords.Spoken(text)) is [{ } value]
            ? MeaningMap.From(value, home.Settings.WeightUnit)
            : null;
        return meaning is Meaning.ReadingSaid said
            ? (said.Reading, null)
            : (null, $"\"{text}\": {(meaning is Meaning.NotPossible impossible ? impossible.Why : "that is no reading")}; "
                + "write one such as \"pulse 72\" or \"temperature 98.6\"");
    }
}
