using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.Speech;
using HandsFree.Speech.Vosk;
using HandsFree.Speech.Words;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.App.Hearing;

/// <summary>Starts the engine that was asked for, else the built-in one. None is ever replaced by another in silence.</summary>
internal sealed class Engines(ProgramPaths paths)
{
    private const string VoskModel = "vosk-model-small-en-us-0.15";

    /// <summary>Starts an engine; the built-in one takes some hundred milliseconds.</summary>
    /// <param name="wanted">What --engine or home.json named, of <see cref="EngineNames.All"/>; null for the built-in one.</param>
    /// <param name="wantedBy">Who named it: "--engine" or "home.json"; for the line.</param>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    public EngineChoice Start(string? wanted, string wantedBy, int threads)
    {
        string name = wanted ?? EngineNames.Words;
        (IRecognizer? found, string? why) = name switch
        {
            EngineNames.Words => Guarded(null, () => WordsRecognizer.Open(threads)),
            EngineNames.Vosk => Vosk(),
            _ => throw new ArgumentOutOfRangeException(nameof(wanted), wanted, "no such engine"),
        };
        return (found, name) switch
        {
            (null, _) => EngineChoice.None(wanted is null
                ? $"no engine can hear here ({name}: {why}); build the program again"
                : $"the engine {name} that {wantedBy} asks for can't hear here: {why}"),
            (_, EngineNames.Words) => EngineChoice.Of(found, $"the engine {name} hears{Deaf(found)}"),
            _ => EngineChoice.Of(found, $"the engine {name} hears, because {wantedBy} says so"),
        };
    }

    /// <summary>What the line adds about words of the grammars that the engine never hears; mostly nothing.</summary>
    private string Deaf(IRecognizer recognizer)
    {
        GrammarShelf shelf = new(paths.Grammars);
        IReadOnlyList<string> words = ((WordsRecognizer)recognizer).NotLearned(GrammarShelf.States.Select(state => shelf.Of(state)));
        return words.Count == 0 ? "" : $"; sentences with these words are not heard: {string.Join(", ", words)}";
    }

    private (IRecognizer?, string?) Vosk()
    {
        string[] folders = [.. paths.Models.Select(folder => Path.Combine(folder, VoskModel))];
        VoskOptions options = new(folders.FirstOrDefault(Directory.Exists) ?? folders[0]) { LibraryFile = paths.VoskLibrary };
        return Guarded(VoskRecognizer.WhyNot(options), () => new VoskRecognizer(options));
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
            return (null, $"it does not load ({e.Message.ReplaceLineEndings(" ").Trim()})");
        }
    }
}
