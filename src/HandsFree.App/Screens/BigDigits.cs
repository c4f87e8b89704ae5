namespace HandsFree.App.Screens;

/// <summary>Digits for a glance from two metres: points of 3 columns and 2 rows, 3 points wide and 5 high. "220/110" fills 75 columns.</summary>
internal static class BigDigits
{
    /// <summary>Rows of a text.</summary>
    public const int Rows = 10;

    private const int PointColumns = 3;
    private const int PointRows = 2;
    private const char Full = '█';

    // Five rows of three points, the left one the highest bit.
    private static readonly Dictionary<char, int[]> Points = new()
    {
        ['0'] = [7, 5, 5, 5, 7],
        ['1'] = [2, 6, 2, 2, 7],
        ['2'] = [7, 1, 7, 4, 7],
        ['3'] = [7, 1, 7, 1, 7],
        ['4'] = [5, 5, 7, 1, 1],
        ['5'] = [7, 4, 7, 1, 7],
        ['6'] = [7, 4, 7, 5, 7],
        ['7'] = [7, 1, 1, 1, 1],
        ['8'] = [7, 5, 7, 5, 7],
        ['9'] = [7, 5, 7, 1, 7],
        ['/'] = [1, 1, 2, 4, 4],
        ['.'] = [0, 0, 0, 0, 2],
        [':'] = [0, 2, 0, 2, 0],
    };

    /// <summary>The rows of a text of digits, point, colon and stroke; null where it has another sign or is too wide.</summary>
    /// <param name="text">What.</param>
    /// <param name="columns">How wide it may be.</param>
    public static IReadOnlyList<string>? Of(string text, int columns)
    {
        if (text.Length == 0 || !text.All(Points.ContainsKey) || (text.Length * ((3 * PointColumns) + 2)) - 2 > columns)
        {
            return null;
        }

        return [.. Enumerable.Range(0, Rows).Select(row => string.Join("  ", text.Select(sign => Row(Points[sign][row / PointRows]))))];
    }

    private static string Row(int points) =>
        string.Concat(Enumerable.Range(0, 3).Select(i => new string((points >> (2 - i) & 1) == 1 ? Full : ' ', PointColumns)));
}
