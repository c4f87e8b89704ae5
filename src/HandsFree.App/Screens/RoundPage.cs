using HandsFree.Core.Files;

namespace HandsFree.App.Screens;

/// <summary>The screen as text, whatever draws it: 80 columns by 24 rows, the same place for the same thing.</summary>
internal static class RoundPage
{
    /// <summary>Columns of the screen.</summary>
    public const int Columns = 80;

    /// <summary>Rows of the screen.</summary>
    public const int Rows = 24;

    private const int Middle = 3;
    private const int MostLines = 16;
    private const string Foot = "F1 help  F2 due  F3 reports  F4 round  F5 repeat  Space mic  Esc stop  ^Q leave";

    private static readonly string[] HelpLines =
    [
        "Say it, or type it and press Enter: it means the same.",
        "",
        "room 12 bed b          march third            pulse 72",
        "temperature 98.6       blood pressure 118/76  oxygen 96",
        "count                  refused                next resident",
        "yes    no    repeat    go back    cancel      options",
        "handover               pause    continue      goodbye",
        "",
        "Space on an empty line: the microphone's key; it also silences the program.",
        "Esc: stop. The resident is left and identified again.",
        "Digits alone are the private way, where room mates hear.",
        "",
        "In an emergency use the call light. This program cannot call anybody.",
    ];

    /// <summary>The page of the round.</summary>
    public static IReadOnlyList<string> Round(RoundView view, string typed)
    {
        List<string> lines = [Ends(view.Place, view.Next.Length > 0 ? $"next: {view.Next}" : ""), new('─', Columns), ""];
        lines.AddRange(Fitted(view.IsLocked ? [] : MiddleOf(view), BigDigits.Rows + 2));
        lines.Add("");
        lines.Add(Centred(Wide(view.Awaited)));
        lines.Add("");
        lines.Add(Ends($"{view.Mark} {view.Microphone}", view.Digits.Length > 0 || view.AnswerAwaited ? view.Clock : ""));
        return Whole(lines, view, typed);
    }

    /// <summary>A page with a list.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="items">Its lines; where there are too many, the first ones and how many more.</param>
    /// <param name="none">What stands there where there are none.</param>
    /// <param name="view">For what stands on every page.</param>
    /// <param name="typed">What is being typed.</param>
    public static IReadOnlyList<string> List(string title, IReadOnlyList<string> items, string none, RoundView view, string typed)
    {
        string[] shown = items.Count == 0 ? [none]
            : items.Count <= MostLines ? [.. items]
            : [.. items.Take(MostLines - 1), $"and {items.Count - MostLines + 1} more"];
        return Whole([Ends(title, view.Place), new('─', Columns), .. shown.Select(i => "  " + i), "", $"{view.Mark} {view.Microphone}"], view, typed);
    }

    /// <summary>The page of help.</summary>
    public static IReadOnlyList<string> Help(RoundView view, string typed) => List("Help", HelpLines, "", view, typed);

    private static List<string> MiddleOf(RoundView view)
    {
        if (BigDigits.Of(view.Digits, Columns) is { } digits)
        {
            return [Centred(view.What), "", .. digits.Select(Centred)];
        }

        if (view.Text.Length > 0)
        {
            return [.. Wrapped(view.Text)];
        }

        string[] clock = (view.AnswerAwaited ? "" : view.Clock).Split(' ');
        return BigDigits.Of(clock[^1], Columns) is { } time
            ? [Centred(string.Join(' ', clock[..^1])), "", .. time.Select(Centred)]
            : [Centred(view.What)];
    }

    private static List<string> Whole(List<string> lines, RoundView view, string typed)
    {
        const int OfBottom = 3;
        List<string> all = Fitted(lines, Rows - OfBottom);
        all.Add(Cut(view.Warning));
        all.Add(Cut($"> {(view.IsLocked ? new string('*', typed.Length) : typed)}_"));
        all.Add(Foot);
        return [.. all.Select(Cut)];
    }

    private static List<string> Fitted(IReadOnlyList<string> lines, int rows) =>
        [.. lines.Take(rows), .. Enumerable.Repeat("", Math.Max(0, rows - lines.Count))];

    private static string Ends(string left, string right) => Cut(left.PadRight(Columns - right.Length) + right);

    private static string Centred(string text) => Cut(new string(' ', Math.Max(0, (Columns - text.Length) / 2)) + text);

    // The screen's door: nothing from a record steers the terminal.
    private static string Cut(string text) => PlainText.Shown(text.Length <= Columns ? text : text[..(Columns - 1)] + "…");

    // Letters apart are read from farther away, where there is room for them.
    private static string Wide(string text)
    {
        string wide = string.Join("   ", text.ToUpperInvariant().Split(' ').Select(word => string.Join(' ', word.ToCharArray())));
        return wide.Length <= Columns ? wide : text.ToUpperInvariant();
    }

    private static IEnumerable<string> Wrapped(string text)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length + word.Length + 1 > Columns - (2 * Middle))
            {
                yield return new string(' ', Middle) + line;
                line = "";
            }

            line += line.Length == 0 ? word : " " + word;
        }

        yield return new string(' ', Middle) + line;
    }
}
