namespace HandsFree.Core.Rules;

/// <summary>The text of a rule file with the name that its errors carry.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Text">Its content, JSON.</param>
public sealed record RuleFile(string Name, string Text);
