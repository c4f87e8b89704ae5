using System.Text.RegularExpressions;

namespace HandsFree.App.Homes;

/// <summary>Which of two words the home wants to hear and read.</summary>
/// <param name="Refused">"refused" or "declined".</param>
internal sealed partial record Wording(string Refused)
{
    /// <summary>The text in the home's words.</summary>
    public string Of(string text) => RefusedWord().Replace(text, found => char.IsUpper(found.Value[0]) ? char.ToUpperInvariant(Refused[0]) + Refused[1..] : Refused);

    [GeneratedRegex(@"\b[Rr]efused\b", RegexOptions.CultureInvariant)]
    private static partial Regex RefusedWord();
}
