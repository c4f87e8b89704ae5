namespace HandsFree.Core.Dialogue;

/// <summary>Small help with sentences.</summary>
internal static class Sentence
{
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string Small(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> items, string last = "and") =>
        items.Count < 2 ? string.Concat(items) : string.Join(", ", items.SkipLast(1)) + $" {last} " + items[^1];

    /// <summary>Sentences with one blank between; empty ones fall out.</summary>
    public static string Join(params string[] sentences) => string.Join(' ', sentences.Where(s => s.Length > 0));
}
