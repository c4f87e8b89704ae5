namespace HandsFree.Core.Rules;

/// <summary>The symptoms that a rule can ask for, as they are said.</summary>
public static class Symptoms
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = ["short of breath", "palpitations", "chest pain", "headache", "weakness"];
}
