namespace HandsFree.Scenarios.Attacks;

/// <summary>Texts that steer instead of saying something.</summary>
internal static class Steering
{
    /// <summary>Clears the terminal's screen (ECMA-48 ED).</summary>
    public const string ClearScreen = "\u001b[2J";

    /// <summary>Sets the terminal's title.</summary>
    public const string Title = "\u001b]0;all is well\u0007";

    /// <summary>Turns the direction of writing: what follows reads backwards (UAX #9, RLO).</summary>
    public const string Backwards = "\u202e";

    /// <summary>Of each kind one: C0, C1, bidi, zero width, byte order mark, soft hyphen, line separator, tag.</summary>
    public static IReadOnlyList<string> Kinds { get; } =
        [ClearScreen, Title, "\u009b2J", Backwards, "\u2066", "\u200b", "\ufeff", "\u00ad", "\u2028", "\U000e0041", "\r", "\b"];

    /// <summary>Whether a terminal or a reader can be steered by what was written; line ends and tabs are the program's own.</summary>
    public static bool Steers(string written) => written.EnumerateRunes()
        .Any(r => r.Value is not ('\n' or '\r' or '\t') && System.Text.Rune.GetUnicodeCategory(r) is System.Globalization.UnicodeCategory.Control
            or System.Globalization.UnicodeCategory.Format or System.Globalization.UnicodeCategory.LineSeparator);
}
