using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using HandsFree.Speech.Neural;
using HandsFree.Speech.Small;
using HandsFree.Speech.Sphinx;
using HandsFree.Speech.Vosk;
using HandsFree.Speech.Words;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.App.Hearing;

/// <summary>Starts the engine that was asked for, else the best that this machine has.</summary>
internal sealed class Engines(ProgramPaths paths)
{
    private const string NeuralModel = "moonshine-base-en";
    private const string VoskModel = "vosk-model-small-en-us-0.15";

    /// <summary>Starts an engine; loading takes up to some seconds, the very first time some ten more.</summary>
    /// <param name="wanted">What --engine or home.json named, of <see cref="EngineNames.All"/>; null for the best that is here.</param>
    /// <param name="wantedBy">Who named it: "--engine" or "home.json"; for the line.</param>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    public EngineChoice Start(string? wanted, string wantedBy, int threads)
    {
        if (wanted is not null)
        {
            (IRecognizer? named, string? why) = Open(wanted, threads);
            return named is null
                ? EngineChoice.None($"the engine {wanted} that {wantedBy} asks for can't hear here: {why}")
                : EngineChoice.Of(named, (wanted == EngineNames.All[0] ? $"the engine {wanted} hears" : $"the engine {wanted} hears, because {wantedBy} says so") + Deaf(named));
        }

        List<string> reasons = [];
        foreach (string name in EngineNames.All)
        {
            (IRecognizer? found, string? why) = Open(name, threads);
            if (found is not null)
            {
                string line = reasons.Count == 0 ? $"the engine {name} hears" : $"the engine {name} hears; {string.Join("; ", reasons)}";
                return EngineChoice.Of(found, line + Deaf(found));
            }

            reasons.Add($"not {name}: {why}");
        }

        return EngineChoice.None($"no engine can hear here ({string.Join("; ", reasons)}); {paths.FetchAgain}");
    }

    /// <summary>What the line adds about words of the grammars that an engine never hears; mostly nothing.</summary>
    private string Deaf(IRecognizer recognizer)
    {
        Func<IEnumerable<Grammar>, IReadOnlyList<string>>? notLearned = recognizer switch
        {
            WordsRecognizer built => built.NotLearned,
            SmallRecognizer small => small.NotLearned,
            _ => null,
        };
        if (notLearned is null)
        {
            return "";
        }

        GrammarShelf shelf = new(paths.Grammars);
        IReadOnlyList<string> words = notLearned(GrammarShelf.States.Select(state => shelf.Of(state)));
        return words.Count == 0 ? "" : $"; sentences with these words are not heard: {string.Join(", ", words)}";
    }

    private (IRecognizer? Recognizer, string? WhyNot) Open(string name, int threads) => name switch
    {
        EngineNames.Words => Guarded(null, () => WordsRecognizer.Open(threads)),
        EngineNames.Neural => Neural(threads),
        EngineNames.Vosk => Vosk(),
        EngineNames.Sphinx => Guarded(SphinxRecognizer.WhyNot(new SphinxOptions()), () => new SphinxRecognizer(new SphinxOptions())),
        EngineNames.Small => Guarded(null, () => SmallRecognizer.Open(threads)),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such engine"),
    };

    private (IRecognizer?, string?) Neural(int threads)
    {
        string folder = Folder(NeuralModel, f => NeuralRecognizer.WhyNot(f) is null);
        string? whyNot = NeuralRecognizer.WhyNot(folder) is { } missing ? $"{missing} ({paths.FetchAgain})" : null;
        return Guarded(whyNot, () => NeuralRecognizer.Open(folder, paths.Cache, threads));
    }

    private (IRecognizer?, string?) Vosk()
    {
        VoskOptions options = new(Folder(VoskModel, Directory.Exists)) { LibraryFile = paths.VoskLibrary };
        return Guarded(VoskRecognizer.WhyNot(options), () => new VoskRecognizer(options));
    }

    /// <summary>Where the model lies, or where it should lie.</summary>
    private string Folder(string model, Func<string, bool> isThere)
    {
        string[] folders = [.. paths.Models.Select(folder => Path.Combine(folder, model))];
        return folders.FirstOrDefault(isThere) ?? folders[0];
    }

    /// <summary>A file that is there but broken is a reason too, not the end of the program.</summary>
    private static (IRecognizer?, string?) Guarded(string? whyNot, Func<IRecognizer> open)
    {
        if (whyNot is not null)
        {
            return (null, whyNot);
        }

        try
        {
            return (open(), null);
        }
        catch (Exception e) when (e is OnnxRuntimeException or IOException or UnauthorizedAccessException or InvalidOperationException or InvalidDataException)
        {
            return (null, $"it does not load ({e.Message.ReplaceLineEndings(" ").Trim()}); fetch its model again");
        }
    }
}
