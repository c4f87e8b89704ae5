using System.Globalization;
using System.Text.Json;

namespace HandsFree.Core.Files;

/// <summary>A JSON value that knows its line.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Line">From 1.</param>
public sealed record LocatedNode(JsonValueKind Kind, int Line)
{
    /// <summary>A text's content; empty for anything else.</summary>
    public string Text { get; init; } = "";

    /// <summary>A number's value; 0 for anything else.</summary>
    public decimal Number { get; init; }

    /// <summary>An object's fields, in the order of the file; empty for anything else.</summary>
    public List<LocatedField> Fields { get; } = [];

    /// <summary>A list's items; empty for anything else.</summary>
    public List<LocatedNode> Items { get; } = [];

    /// <summary>What kind of value it is, for an error message.</summary>
    public string KindInWords => Kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True or JsonValueKind.False => "true or false",
        _ => "null",
    };

    /// <summary>The value itself, for an error message.</summary>
    public string InWords => Kind switch
    {
        JsonValueKind.String => $"\"{Text}\"",
        JsonValueKind.Number => Number.ToString(CultureInfo.InvariantCulture),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => KindInWords,
    };

    /// <summary>The object's field of that name, or null.</summary>
    public LocatedNode? this[string name] => Fields.Find(field => field.Name == name)?.Value;

    /// <summary>The text of the object's field, or null where there is no such field.</summary>
    public string? TextOf(string name) => this[name]?.Text;

    /// <summary>The number of the object's field, or null where there is no such field.</summary>
    public decimal? NumberOf(string name) => this[name]?.Number;

    /// <summary>The items of the object's list; none where there is no such field.</summary>
    public IReadOnlyList<LocatedNode> ItemsOf(string name) => this[name]?.Items ?? [];
}
