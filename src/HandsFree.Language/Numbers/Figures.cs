using System.Globalization;

namespace HandsFree.Language.Numbers;

/// <summary>Joins spoken words into a text in which numbers stand in figures: "one eighteen", "one one eight" and "one hundred
/// eighteen" and "a hundred eighteen" all make "118".</summary>
internal static class Figures
{
    // What may still follow the last figure: the digit of a tens word, or the two figures of a hundred.
    private const char OpenTens = '\u0001';
    private const char OpenHundred = '\u0002';

    /// <summary>The text with one more word.</summary>
    public static string Append(string text, string word)
    {
        char last = text.Length > 0 ? text[^1] : ' ';
        if (NumberWord.Of(word) is not { } number)
        {
            return last == OpenHundred && word == "and" ? text : (text.Length == 0 ? word : Close(text) + " " + word);
        }

        if (number.Kind == NumberKind.Hundred && (text == "a" || text.EndsWith(" a", StringComparison.Ordinal)))
        {
            return text[..^1] + "1" + OpenHundred;
        }

        string figures = number.Value.ToString(CultureInfo.InvariantCulture);
        bool afterFigure = char.IsAsciiDigit(last);
        string open = last is OpenTens or OpenHundred ? text[..^1] : text;
        return number.Kind switch
        {
            NumberKind.Hundred when afterFigure => text + OpenHundred,
            NumberKind.Digit when last == OpenTens && number.Value > 0 => open + figures,
            NumberKind.Digit when last == OpenHundred && number.Value > 0 => open + "0" + figures,
            NumberKind.Teen when last == OpenHundred => open + figures,
            NumberKind.Tens when last == OpenHundred => open + figures[0] + OpenTens,
            NumberKind.Tens => Gap(text) + figures[0] + OpenTens,
            _ => Gap(text) + figures,
        };
    }

    /// <summary>The text when nothing follows.</summary>
    public static string Close(string text) => text.Length == 0 ? text : text[^1] switch
    {
        OpenTens => text[..^1] + "0",
        OpenHundred => text[..^1] + "00",
        _ => text,
    };

    /// <summary>The closed text, with a blank where it ends in a word.</summary>
    private static string Gap(string text)
    {
        string closed = Close(text);
        return closed.Length > 0 && !char.IsAsciiDigit(closed[^1]) ? closed + " " : closed;
    }
}
