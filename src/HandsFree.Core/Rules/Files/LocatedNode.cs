using System.Text.Json;

namespace HandsFree.Core.Rules.Files;

/// <summary>A JSON value that knows its line.</summary>
internal sealed record LocatedNode(JsonValueKind Kind, int Line)
{
    public string Text { get; init; } = "";

    public decimal Number { get; init; }

    public List<LocatedField> Fields { get; } = [];

    public List<LocatedNode> Items { get; } = [];

    public string KindInWords => Kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True or JsonValueKind.False => "true or false",
        _ => "null",
    };
}
