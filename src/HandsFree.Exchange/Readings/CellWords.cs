namespace HandsFree.Exchange.Readings;

/// <summary>The names of an enumeration as they stand in a cell: "NasalCannula" as "nasal cannula".</summary>
internal static class CellWords<T>
    where T : struct, Enum
{
    /// <summary>Every word with what it stands for.</summary>
    public static IReadOnlyDictionary<string, T> All { get; } = Enum.GetValues<T>().ToDictionary(Of);

    /// <summary>The word of a value.</summary>
    public static string Of(T value) =>
        string.Concat($"{value}".Select((sign, i) => char.IsUpper(sign) ? (i > 0 ? " " : "") + char.ToLowerInvariant(sign) : $"{sign}"));
}
