using System.Globalization;

namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Numbers digit by digit, and back; of the aide's own making, so that a mistake of the program's texts is not hers too.</summary>
internal static class DigitNames
{
    private static readonly string[] Names = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>98.6 as "nine eight point six".</summary>
    public static string Of(decimal number) => string.Join(
        ' ', number.ToString("0.#", CultureInfo.InvariantCulture).Select(sign => sign == '.' ? "point" : Names[sign - '0']));

    /// <summary>The digits of a reading's number.</summary>
    public static string Of(Measured value) => value.Second is { } low ? $"{Of(value.First)} over {Of(low)}" : Of(value.First);

    /// <summary>"nine eight point six" as 98.6; null where a word is no digit.</summary>
    public static decimal? Number(IEnumerable<string> words)
    {
        string text = string.Concat(words.Select(word => word == "point" ? "." : Array.IndexOf(Names, word) is >= 0 and var digit ? $"{digit}" : "?"));
        return decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) ? number : null;
    }
}
