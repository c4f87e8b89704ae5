using System.Text;

namespace HandsFree.Speech.Voice;

/// <summary>Writes a read-back so that every voice says it alike: digits that stand alone are said one by one.</summary>
public static class SpokenText
{
    private static readonly string[] Digits = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    /// <summary>"1 1 8 over 7 6" becomes "one, one, eight over seven, six": a comma between two digits keeps a voice from
    /// joining them to a number or swallowing the second of two equal ones. Numbers of several digits are left to the voice.</summary>
    /// <param name="text">The read-back as it is shown.</param>
    public static string ForSpeech(string text)
    {
        var spoken = new StringBuilder();
        bool afterDigit = false;
        foreach (string word in text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            string bare = word.TrimEnd('.', ',', ';', ':', '?', '!');
            bool digit = bare.Length == 1 && char.IsAsciiDigit(bare[0]);
            spoken.Append(spoken.Length == 0 ? "" : digit && afterDigit ? ", " : " ");
            spoken.Append(digit ? Digits[bare[0] - '0'] + word[1..] : word);
            afterDigit = digit && bare.Length == word.Length;
        }

        return spoken.ToString();
    }
}
