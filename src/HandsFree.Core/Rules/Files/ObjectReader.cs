using System.Text.Json;
using HandsFree.Core.Files;

namespace HandsFree.Core.Rules.Files;

/// <summary>Takes the fields of one JSON object by name and type; whatever is wrong becomes an error with its line.</summary>
internal sealed class ObjectReader
{
    private readonly LocatedNode node;
    private readonly string file;
    private readonly ICollection<FileError> errors;
    private readonly HashSet<string> taken = new(StringComparer.Ordinal);
    private readonly bool isObject;

    public ObjectReader(LocatedNode node, string file, ICollection<FileError> errors)
    {
        (this.node, this.file, this.errors) = (node, file, errors);
        isObject = node.Kind == JsonValueKind.Object;
        if (!isObject)
        {
            errors.Add(new(file, node.Line, $"must be an object {{…}}, is {node.KindInWords}"));
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var field in node.Fields.Where(f => !seen.Add(f.Name)))
        {
            Fault($"the field \"{field.Name}\" is there twice; keep one", field.Line);
        }
    }

    public string File => file;

    public int Line => node.Line;

    public bool Has(string name) => node.Fields.Exists(f => f.Name == name);

    public int LineOf(string name) => node.Fields.Find(f => f.Name == name)?.Line ?? node.Line;

    /// <summary>Adds an error; of what is no object at all, that was said already.</summary>
    public void Fault(string reason, int? line = null)
    {
        if (isObject)
        {
            errors.Add(new(file, line ?? node.Line, reason));
        }
    }

    /// <summary>The field's value of any type, or null where it is not there.</summary>
    public LocatedNode? Any(string name)
    {
        taken.Add(name);
        return node.Fields.Find(f => f.Name == name)?.Value;
    }

    public string RequiredText(string name)
    {
        if (Text(name) is { } text)
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                Fault($"\"{name}\" is empty; write it out", LineOf(name));
            }

            return text;
        }

        if (!Has(name))
        {
            Fault($"\"{name}\" is missing; write it");
        }

        return "";
    }

    public string? Text(string name) => Typed(name, "a text", JsonValueKind.String)?.Text;

    public bool? Truth(string name) =>
        Typed(name, "true or false", JsonValueKind.True, JsonValueKind.False) is { } value ? value.Kind == JsonValueKind.True : null;

    public decimal? Number(string name, decimal least, decimal greatest)
    {
        if (Typed(name, "a number", JsonValueKind.Number) is not { } value)
        {
            return null;
        }

        if (value.Number >= least && value.Number <= greatest)
        {
            return value.Number;
        }

        Fault($"\"{name}\" is {value.Number}, must be {least} to {greatest}", value.Line);
        return null;
    }

    public int? Whole(string name, int least, int greatest)
    {
        decimal? number = Number(name, least, greatest);
        if (number is { } n && n != decimal.Truncate(n))
        {
            Fault($"\"{name}\" is {n}, must be a whole number", LineOf(name));
            return null;
        }

        return (int?)number;
    }

    /// <summary>A text that must be one of the given words.</summary>
    public T? Choice<T>(string name, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (words.TryGetValue(text, out var value))
        {
            return value;
        }

        Fault($"\"{name}\" is \"{text}\", must be one of: {string.Join(", ", words.Keys)}", LineOf(name));
        return null;
    }

    /// <summary>A list of texts, each one of the given words; null where the field is not there.</summary>
    public IReadOnlyList<T>? Choices<T>(string name, IReadOnlyDictionary<string, T> words)
    {
        if (Typed(name, "a list", JsonValueKind.Array) is not { } list)
        {
            return null;
        }

        var found = new List<T>();
        foreach (var item in list.Items)
        {
            if (item.Kind == JsonValueKind.String && words.TryGetValue(item.Text, out var value))
            {
                found.Add(value);
            }
            else
            {
                Fault($"\"{name}\" may hold only: {string.Join(", ", words.Keys)}", item.Line);
            }
        }

        if (list.Items.Count == 0)
        {
            Fault($"\"{name}\" is an empty list; leave the field out or fill it", list.Line);
        }

        return found;
    }

    public ObjectReader? Object(string name) =>
        Typed(name, "an object {…}", JsonValueKind.Object) is { } value ? new(value, file, errors) : null;

    public IReadOnlyList<ObjectReader> Objects(string name) =>
        Typed(name, "a list", JsonValueKind.Array) is { } list ? [.. list.Items.Select(i => new ObjectReader(i, file, errors))] : [];

    /// <summary>Every field that was not asked for is an error.</summary>
    public void NothingElse()
    {
        foreach (var field in node.Fields.Where(f => !taken.Contains(f.Name)))
        {
            Fault($"unknown field \"{field.Name}\"; known here: {string.Join(", ", taken.Order(StringComparer.Ordinal))}", field.Line);
        }
    }

    private LocatedNode? Typed(string name, string wanted, params ReadOnlySpan<JsonValueKind> kinds)
    {
        if (Any(name) is not { } value)
        {
            return null;
        }

        if (kinds.Contains(value.Kind))
        {
            return value;
        }

        Fault($"\"{name}\" must be {wanted}, is {value.KindInWords}", value.Line);
        return null;
    }
}
