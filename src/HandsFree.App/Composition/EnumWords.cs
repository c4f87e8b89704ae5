namespace HandsFree.App.Composition;

/// <summary>The names of an enumeration as words.</summary>
internal static class EnumWords
{
    /// <summary>"ReportThisShift" as "report this shift".</summary>
    public static string Of<T>(T value)
        where T : struct, Enum =>
        string.Concat($"{value}".Select((sign, i) => char.IsUpper(sign) ? (i > 0 ? " " : "") + char.ToLowerInvariant(sign) : $"{sign}"));
}
