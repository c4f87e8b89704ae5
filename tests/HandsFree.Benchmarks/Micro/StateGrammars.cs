using HandsFree.App.Composition;
using HandsFree.Language.Grammars;

namespace HandsFree.Benchmarks.Micro;

/// <summary>The largest state's grammar.</summary>
internal static class StateGrammars
{
    private static readonly ProgramPaths Paths = new(Surroundings.OfThisProcess());

    /// <summary>Reads the grammar of the state that listens for readings, with all that it imports.</summary>
    public static Grammar Readings() => Grammar.Load(Path.Combine(Paths.Grammars, "readings.jsgf"));
}
