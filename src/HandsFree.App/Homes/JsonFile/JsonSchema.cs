using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>A JSON Schema that the program carries. Of the standard it may use the keywords that <see cref="SchemaCheck"/> checks, and
/// those that check nothing.</summary>
internal sealed class JsonSchema
{
    /// <summary>The keywords that may stand in a schema of ours: what stands there is checked, or checks nothing by its nature.</summary>
    public static IReadOnlySet<string> Keywords { get; } = FrozenSet.ToFrozenSet(
    [
        "$schema", "$id", "$defs", "$ref", "title", "description", "default", "type", "properties", "required", "additionalProperties", "items",
        "enum", "minimum", "maximum", "minLength", "minItems", "pattern",
    ]);

    private JsonSchema(JsonElement root) => Root = root;

    public JsonElement Root { get; }

    /// <summary>The schema of a file: "home" or "roster".</summary>
    public static JsonSchema Of(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name + ".schema.json")
            ?? throw new InvalidOperationException($"the program carries no schema {name}");
        using JsonDocument document = JsonDocument.Parse(stream);
        return new(document.RootElement.Clone());
    }

    /// <summary>The schema itself, or the one of $defs that it refers to.</summary>
    public JsonElement Resolve(JsonElement schema) =>
        schema.TryGetProperty("$ref", out JsonElement reference)
            ? Root.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..])
            : schema;
}
