namespace HandsFree.App.Homes.JsonFile;

/// <summary>A named value of a JSON object, with the line of its name.</summary>
internal sealed record LocatedField(string Name, int Line, LocatedValue Value);
