using HandsFree.Core.Files;

namespace HandsFree.App.Homes.JsonFile;

/// <summary>Reads a file of the home and checks it against its schema.</summary>
internal static class CheckedFile
{
    private const long MostBytes = 10_000_000;

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

        try
        {
            if (new FileInfo(path).Length > MostBytes)
            {
                errors.Add(new(path, 0, $"larger than {MostBytes / 1_000_000} MB; this is no {Path.GetFileName(path)}"));
                return null;
            }

            return Of(path, File.ReadAllBytes(path), schema, errors);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.Add(new(path, 0, $"can't be read ({e.Message.ReplaceLineEndings(" ")}); check the file and its rights"));
            return null;
        }
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
