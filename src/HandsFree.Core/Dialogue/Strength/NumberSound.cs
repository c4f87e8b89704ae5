namespace HandsFree.Core.Dialogue;

/// <summary>The sound of a number that was said: what an engine mishears once it mishears again in the same way, so that the same sound
/// is one piece of evidence however often it comes. "Twenty eight" and "two eight" are two.</summary>
internal static class NumberSound
{
    /// <summary>The number words alone, as one text; empty where there is none.</summary>
    public static string Of(string words) => string.Join(' ', words
        .Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries)
        .Select(w => w.TrimEnd('.').ToUpperInvariant())
        .Where(w => Numbers.Contains(w) || w.Any(char.IsAsciiDigit))
        .Select(w => w == "OH" ? "ZERO" : w));

    private static readonly HashSet<string> Numbers =
    [
        "OH", "ZERO", "ONE", "TWO", "THREE", "FOUR", "FIVE", "SIX", "SEVEN", "EIGHT", "NINE", "TEN", "ELEVEN", "TWELVE", "THIRTEEN", "FOURTEEN",
        "FIFTEEN", "SIXTEEN", "SEVENTEEN", "EIGHTEEN", "NINETEEN", "TWENTY", "THIRTY", "FORTY", "FIFTY", "SIXTY", "SEVENTY", "EIGHTY", "NINETY",
        "HUNDRED", "POINT", "OVER", "HALF",
    ];
}
