using System.Text.Json;
using System.Text.RegularExpressions;
using HandsFree.Core.Files;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>Checks a file against its schema; every error with its line.</summary>
internal sealed class SchemaCheck(JsonSchema schema, string file, ICollection<FileError> errors)
{
    /// <summary>Adds all that is wrong with the file's top value.</summary>
    public void Check(LocatedNode top) => Check(top, schema.Root, "");

    private void Check(LocatedNode value, JsonElement asked, string path)
    {
        JsonElement rule = schema.Resolve(asked);
        string wanted = rule.GetProperty("type").GetString()!;
        if (!Fits(value.Kind, wanted))
        {
            Fault(value.Line, path, $"is {value.InWords}, must be {InWords(wanted)}{Described(rule)}");
            return;
        }

        if (rule.TryGetProperty("enum", out JsonElement words) && !words.EnumerateArray().Any(word => IsWord(value, word)))
        {
            Fault(value.Line, path, $"is {value.InWords}, must be one of: {string.Join(", ", words.EnumerateArray())}");
            return;
        }

        switch (wanted)
        {
            case "object":
                CheckObject(value, rule, path);
                break;
            case "array":
                CheckList(value, rule, path);
                break;
            case "string":
                CheckText(value, rule, path);
                break;
            case "number" or "integer":
                CheckNumber(value, rule, path, wanted);
                break;
            default:
                break;
        }
    }

    private void CheckObject(LocatedNode value, JsonElement rule, string path)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (LocatedField field in value.Fields)
        {
            string at = path.Length == 0 ? field.Name : $"{path}.{field.Name}";
            if (!seen.Add(field.Name))
            {
                Fault(field.Line, at, "is there twice; keep one");
            }
            else if (rule.GetProperty("properties").TryGetProperty(field.Name, out JsonElement known))
            {
                Check(field.Value, known, at);
            }
            else
            {
                string names = string.Join(", ", rule.GetProperty("properties").EnumerateObject().Select(p => p.Name).Where(n => n != "$schema"));
                Fault(field.Line, at, $"is not known here; known are: {names}");
            }
        }

        if (rule.TryGetProperty("required", out JsonElement required))
        {
            foreach (string name in required.EnumerateArray().Select(n => n.GetString()!).Where(n => !seen.Contains(n)))
            {
                JsonElement missing = schema.Resolve(rule.GetProperty("properties").GetProperty(name));
                Fault(value.Line, path.Length == 0 ? name : $"{path}.{name}", $"is missing{Described(missing)}");
            }
        }
    }

    private void CheckList(LocatedNode value, JsonElement rule, string path)
    {
        if (rule.TryGetProperty("minItems", out JsonElement least) && value.Items.Count < least.GetInt32())
        {
            Fault(value.Line, path, $"has {value.Items.Count} entries, must have at least {least.GetInt32()}; leave it out or fill it");
        }

        for (int i = 0; i < value.Items.Count; i++)
        {
            Check(value.Items[i], rule.GetProperty("items"), $"{path}[{i + 1}]");
        }
    }

    private void CheckText(LocatedNode value, JsonElement rule, string path)
    {
        if (rule.TryGetProperty("minLength", out JsonElement least) && value.Text.Trim().Length < least.GetInt32())
        {
            Fault(value.Line, path, $"is empty{Described(rule)}");
        }
        else if (rule.TryGetProperty("pattern", out JsonElement pattern) && !Regex.IsMatch(value.Text, pattern.GetString()!, RegexOptions.CultureInvariant))
        {
            Fault(value.Line, path, $"is {value.InWords}{Described(rule)}");
        }
    }

    private void CheckNumber(LocatedNode value, JsonElement rule, string path, string wanted)
    {
        decimal? least = rule.TryGetProperty("minimum", out JsonElement minimum) ? minimum.GetDecimal() : null;
        decimal? greatest = rule.TryGetProperty("maximum", out JsonElement maximum) ? maximum.GetDecimal() : null;
        if (value.Number < least || value.Number > greatest)
        {
            Fault(value.Line, path, $"is {value.InWords}, must be {least} to {greatest}");
        }
        else if (wanted == "integer" && decimal.Truncate(value.Number) != value.Number)
        {
            Fault(value.Line, path, $"is {value.InWords}, must be a whole number");
        }
    }

    private void Fault(int line, string path, string reason) =>
        errors.Add(new(file, line, path.Length == 0 ? $"the file {reason}" : $"\"{path}\" {reason}"));

    private static string Described(JsonElement rule) =>
        rule.TryGetProperty("description", out JsonElement description) ? $"; wanted: {description.GetString()}" : "";

    private static bool IsWord(LocatedNode value, JsonElement word) =>
        word.ValueKind == JsonValueKind.Number ? word.GetDecimal() == value.Number : word.GetString() == value.Text;

    private static bool Fits(JsonValueKind kind, string wanted) => wanted switch
    {
        "object" => kind == JsonValueKind.Object,
        "array" => kind == JsonValueKind.Array,
        "string" => kind == JsonValueKind.String,
        "number" or "integer" => kind == JsonValueKind.Number,
        "boolean" => kind is JsonValueKind.True or JsonValueKind.False,
        _ => throw new InvalidOperationException($"the schema asks for the type {wanted}, which is not checked"),
    };

    private static string InWords(string wanted) => wanted switch
    {
        "object" => "an object {…}",
        "array" => "a list […]",
        "string" => "a text",
        "integer" => "a whole number",
        "number" => "a number",
        _ => "true or false",
    };
}
