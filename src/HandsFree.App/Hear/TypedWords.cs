using System.Text.RegularExpressions;
using HandsFree.Language.Numbers;

namespace HandsFree.App.Hear;

/// <summary>Typed text as the words that the grammars know: figures one by one, "." between figures as "point", "/" as "over".</summary>
internal static partial class TypedWords
{
    /// <summary>"pulse 132" becomes "pulse one three two", "118/76" becomes "one one eight over seven six".</summary>
    public static string Spoken(string text)
    {
        string spelled = Stop().Replace(text, " point ").Replace("/", " over ", StringComparison.Ordinal).Replace("%", " percent", StringComparison.Ordinal);
        return Figure().Replace(spelled, figure => $" {NumberWord.Digit(figure.Value[0] - '0')} ");
    }

    [GeneratedRegex(@"(?<=[0-9])\.(?=[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Stop();

    [GeneratedRegex("[0-9]", RegexOptions.CultureInvariant)]
    private static partial Regex Figure();
}
