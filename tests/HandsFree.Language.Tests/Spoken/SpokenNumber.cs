using System.Globalization;
using Humanizer;

namespace HandsFree.Language.Tests.Spoken;

/// <summary>The ways to say a number, made without the grammars: the words of Humanizer's ToWords() (NuGet Humanizer.Core), with and
/// without "and", and what people shorten: "one eighteen", "one one eight", "one oh eight".</summary>
internal static class SpokenNumber
{
    /// <summary>Every form of a whole number from 0 to 599.</summary>
    public static IEnumerable<string> Forms(int value)
    {
        string full = Words(value);
        IEnumerable<string> forms = [full, full.Replace(" and ", " ", StringComparison.Ordinal)];
        if (value >= 10)
        {
            forms = forms.Concat(Digits(value));
        }

        if (value is >= 100 and < 200)
        {
            forms = forms.Concat(["a" + full["one".Length..], "a" + full["one".Length..].Replace(" and ", " ", StringComparison.Ordinal)]);
        }

        if (value >= 100 && value % 100 >= 10)
        {
            forms = forms.Append(Words(value / 100) + " " + Words(value % 100));
        }

        return forms.Distinct();
    }

    /// <summary>The forms of a number with tenths that say "point".</summary>
    public static IEnumerable<string> PointForms(decimal value)
    {
        int tenths = (int)(value * 10 % 10);
        IEnumerable<string> last = tenths == 0 ? ["zero", "oh"] : [Words(tenths)];
        return Forms((int)value).SelectMany(whole => last.Select(tenth => whole + " point " + tenth));
    }

    /// <summary>"ninety eight six", "nine eight six": tenths without "point", from 30.0 to 99.9.</summary>
    public static IEnumerable<string> ShortForms(decimal value)
    {
        int whole = (int)value;
        string tenth = Words((int)(value * 10 % 10));
        IEnumerable<string> wholes = whole % 10 == 0 ? Digits(whole) : Digits(whole).Append(Words(whole));
        return wholes.Select(w => w + " " + tenth);
    }

    /// <summary>Digit by digit, each zero after the first digit as "zero" and as "oh".</summary>
    public static IEnumerable<string> Digits(int value)
    {
        string digits = value.ToString(CultureInfo.InvariantCulture);
        IEnumerable<string> forms = [Words(digits[0] - '0')];
        foreach (char digit in digits[1..])
        {
            string[] ways = digit == '0' ? ["zero", "oh"] : [Words(digit - '0')];
            forms = [.. forms.SelectMany(f => ways.Select(w => f + " " + w))];
        }

        return forms;
    }

    /// <summary>Humanizer's words, without its hyphen.</summary>
    public static string Words(int value) => value.ToWords(CultureInfo.InvariantCulture).Replace('-', ' ');

    /// <summary>Humanizer's ordinal words, without its hyphen: "twenty fifth".</summary>
    public static string Ordinal(int value) => value.ToOrdinalWords(CultureInfo.InvariantCulture).Replace('-', ' ');
}
