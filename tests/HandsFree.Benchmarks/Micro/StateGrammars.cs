using HandsFree.App.Composition;
using HandsFree.Language.Grammars;
using HandsFree.Speech.Neural;

namespace HandsFree.Benchmarks.Micro;

/// <summary>The largest state's grammar and the model's tokens.</summary>
internal static class StateGrammars
{
    private static readonly ProgramPaths Paths = new(Surroundings.OfThisProcess());

    /// <summary>Reads the grammar of the state that listens for readings, with all that it imports.</summary>
    public static Grammar Readings() => Grammar.Load(Path.Combine(Paths.Grammars, "readings.jsgf"));

    /// <summary>Reads the neural model's token list.</summary>
    /// <exception cref="InvalidDataException">The model is not here.</exception>
    public static Vocabulary Tokens() => Vocabulary.Read(
        Paths.Models.Select(folder => Path.Combine(folder, "moonshine-base-en", NeuralModel.Files[2])).FirstOrDefault(File.Exists)
        ?? throw new InvalidDataException("the neural model's tokens are not here; set HANDSFREE_MODELS or run scripts/setup.sh --again"));
}
