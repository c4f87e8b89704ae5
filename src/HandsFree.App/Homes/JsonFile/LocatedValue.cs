using System.Globalization;
using System.Text.Json;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>A JSON value that knows its line.</summary>
internal sealed class LocatedValue(JsonValueKind kind, int line)
{
    public JsonValueKind Kind { get; } = kind;

    public int Line { get; } = line;

    public string Text { get; init; } = "";

    public decimal Number { get; init; }

    public List<LocatedField> Fields { get; } = [];

    public List<LocatedValue> Items { get; } = [];

    /// <summary>The field of that name, or null.</summary>
    public LocatedValue? this[string name] => Fields.Find(field => field.Name == name)?.Value;

    /// <summary>The field's text, or null where there is no such field.</summary>
    public string? TextOf(string name) => this[name]?.Text;

    /// <summary>The field's number, or null where there is no such field.</summary>
    public decimal? NumberOf(string name) => this[name]?.Number;

    /// <summary>The items of the field's list; none where there is no such field.</summary>
    public IReadOnlyList<LocatedValue> ItemsOf(string name) => this[name]?.Items ?? [];

    /// <summary>The value as an error message shows it.</summary>
    public string InWords => Kind switch
    {
        JsonValueKind.Object => "an object {…}",
        JsonValueKind.Array => "a list […]",
        JsonValueKind.String => $"\"{Text}\"",
        JsonValueKind.Number => Number.ToString(CultureInfo.InvariantCulture),
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };
}
