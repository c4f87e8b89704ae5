namespace HandsFree.Exchange.Csv;

/// <summary>Keeps a spreadsheet from taking a cell for a formula: an apostrophe goes before what begins like one, and comes off again when
/// the table is read. The first characters are those of OWASP's page "CSV Injection" (from memory), with their full-width forms.</summary>
public static class FormulaGuard
{
    private const char Guard = '\'';
    private const string Beginnings = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    /// <summary>The text as it may stand in a table. A text that already looks guarded gets one apostrophe more, so that none is lost.</summary>
    public static string Guarded(string text) => IsFormula(text) ? Guard + text : text;

    /// <summary>The text of a cell as it was before <see cref="Guarded"/>. A name such as "'t Hooft" stays as it is.</summary>
    public static string Plain(string cell) => cell.StartsWith(Guard) && IsFormula(cell) ? cell[1..] : cell;

    private static bool IsFormula(string text) =>
        text.AsSpan().TrimStart(Guard) is [var first, ..] && Beginnings.Contains(first, StringComparison.Ordinal);
}
