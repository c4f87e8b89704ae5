using HandsFree.App.Files;
using HandsFree.Core.Files;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>Reads a file of the home and checks it against its schema.</summary>
internal static class CheckedFile
{
    /// <summary>The file's top value; null where it is not there, and where it is broken, with the errors.</summary>
    /// <param name="path">The file.</param>
    /// <param name="schema">"home" or "roster".</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static LocatedNode? Read(string path, string schema, ICollection<FileError> errors)
    {
        if (!Path.Exists(path))
        {
            return null;
        }

        (byte[]? content, string? error) = BoundedFile.Read(path);
        if (content is null)
        {
            errors.Add(new(path, 0, error![(path.Length + 2)..]));
            return null;
        }

        return Of(path, content, schema, errors);
    }

    /// <summary>The top value of a file's bytes; null where it is broken, with the errors.</summary>
    public static LocatedNode? Of(string path, byte[] bytes, string schema, ICollection<FileError> errors)
    {
        int before = errors.Count;
        LocatedNode? top = LocatedJson.Read(path, bytes, errors);
        if (top is not null)
        {
            new SchemaCheck(JsonSchema.Of(schema), path, errors).Check(top);
        }

        return errors.Count == before ? top : null;
    }
}
