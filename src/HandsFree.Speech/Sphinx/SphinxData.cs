namespace HandsFree.Speech.Sphinx;

/// <summary>The data files of this folder, carried in the assembly.</summary>
internal static class SphinxData
{
    internal static string Read(string name)
    {
        using Stream stream = typeof(SphinxData).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not in the assembly");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
