using System.Globalization;
using System.Text;

namespace HandsFree.Core.Files;

/// <summary>Text is data. Characters that steer instead of saying something are refused where text comes in and are made visible where
/// it goes out: control characters (a terminal obeys them), format characters (Unicode category Cf: they turn the direction of writing,
/// hide letters, join and part words), separators of lines and paragraphs, and halves of characters.</summary>
/// <remarks>Unicode Standard, chapter 23 (special areas and format characters); the characters that turn the direction of writing are
/// those of UAX #9. The joiners U+200C and U+200D, which some scripts need, are refused too: the program speaks and writes English.</remarks>
public static class PlainText
{
    /// <summary>What stands for such a character where text goes out.</summary>
    public const char Mark = '\uFFFD';

    /// <summary>Null where all characters say something; else which one does not, and what to do.</summary>
    public static string? WhyNot(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Steers(rune))
            {
                return $"holds {Name(rune)}, which cannot be seen; write the text again without it";
            }
        }

        return null;
    }

    /// <summary>The text with a mark for each character that steers; the same text where there is none.</summary>
    public static string Shown(string text) => WhyNot(text) is null ? text : Marked(text, static _ => false);

    /// <summary>The same for text of several lines: line ends and tabs stay.</summary>
    public static string ShownLines(string text) => WhyNot(text) is null ? text : Marked(text, static c => c is '\n' or '\r' or '\t');

    /// <summary>The text for a voice: a blank for each character that steers, which no voice can say.</summary>
    public static string Spoken(string text) => Shown(text).Replace(Mark, ' ');

    /// <summary>Whether a character steers.</summary>
    public static bool Steers(Rune rune) => rune == Rune.ReplacementChar || Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control
        or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;

    private static string Marked(string text, Func<char, bool> stays)
    {
        StringBuilder shown = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Steers(rune) && !(rune.IsBmp && stays((char)rune.Value)))
            {
                shown.Append(Mark);
            }
            else
            {
                shown.Append(rune.ToString());
            }
        }

        return shown.ToString();
    }

    private static string Name(Rune rune) => rune.Value switch
    {
        '\t' => "a tab",
        '\n' or '\r' => "a line end",
        0x1B => "an escape character (U+001B)",
        0xFFFD => "half a character, or the mark of one that could not be read (U+FFFD)",
        0x202A or 0x202B or 0x202C or 0x202D or 0x202E or 0x2066 or 0x2067 or 0x2068 or 0x2069 or 0x200E or 0x200F or 0x061C =>
            $"a character that turns the direction of writing (U+{rune.Value:X4})",
        _ => $"the character U+{rune.Value:X4}",
    };
}
