using HandsFree.Language.Grammars;

namespace HandsFree.App.Hear;

/// <summary>The grammars by the names that the command line uses.</summary>
public sealed class GrammarShelf(string folder)
{
    private readonly Dictionary<(string, string?), Grammar> loaded = [];

    /// <summary>The states that one can listen for.</summary>
    public static IReadOnlyList<string> States { get; } = ["readings", "value", "confirmation", "identity", "count", "handover"];

    /// <summary>The grammar of a state, read once.</summary>
    /// <param name="state">One of <see cref="States"/>.</param>
    /// <param name="rule">A rule of it, for one kind of value; null for the whole.</param>
    /// <exception cref="GrammarException">The file is broken or missing.</exception>
    public Grammar Of(string state, string? rule = null)
    {
        if (!loaded.TryGetValue((state, rule), out Grammar? grammar))
        {
            grammar = Grammar.Load(Path.Combine(folder, state + ".jsgf"), rule);
            loaded.Add((state, rule), grammar);
        }

        return grammar;
    }
}
