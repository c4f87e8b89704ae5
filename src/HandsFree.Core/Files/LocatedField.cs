namespace HandsFree.Core.Files;

/// <summary>A named value of a JSON object, with the line of its name.</summary>
/// <param name="Name">The name.</param>
/// <param name="Line">From 1.</param>
/// <param name="Value">The value.</param>
public sealed record LocatedField(string Name, int Line, LocatedNode Value);
