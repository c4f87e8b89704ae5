namespace HandsFree.Language.Grammars;

/// <summary>One JSGF file as read, before its references are linked.</summary>
internal sealed class JsgfFile(string name)
{
    public string Name { get; } = name;

    public List<(string Name, SourcePosition At)> Imports { get; } = [];

    public Dictionary<string, Rule> Rules { get; } = [];
}
