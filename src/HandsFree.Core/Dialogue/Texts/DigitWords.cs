using System.Globalization;

namespace HandsFree.Core.Dialogue;

/// <summary>Numbers as separate digits (ICAO Annex 10 volume II, 5.2.1.4.1), in plain digit words.</summary>
internal static class DigitWords
{
    private static readonly string[] Names = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>118 as "one one eight", 98.6 as "nine eight point six".</summary>
    public static string Of(decimal number) =>
        string.Join(' ', number.ToString("0.#", CultureInfo.InvariantCulture).Select(c => c == '.' ? "point" : Names[c - '0']));

    /// <summary>Whether a text names its numbers by single digits only, so that no teen can be a ten.</summary>
    public static bool SaidDigitByDigit(string words) =>
        words.Split([' ', ',', '.', '-'], StringSplitOptions.RemoveEmptyEntries).All(IsNoGroup);

    private static bool IsNoGroup(string word) => !Groups.Contains(word) && !(word.Length > 1 && word.All(char.IsAsciiDigit));

    private static readonly HashSet<string> Groups = new(StringComparer.OrdinalIgnoreCase)
    {
        "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty", "thirty",
        "forty", "fifty", "sixty", "seventy", "eighty", "ninety", "hundred",
    };
}
