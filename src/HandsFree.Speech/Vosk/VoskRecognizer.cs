using System.Runtime.CompilerServices;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Vosk;

/// <summary>Vosk with a phrase list made of the grammar. The list is no hard grammar, so that every alternative is matched against
/// the grammar again and what does not match counts as "none of these". One thread at a time.</summary>
public sealed class VoskRecognizer : IRecognizer, IGathersEvidence
{
    private const double LeastOutside = 1e-6;
    private static readonly PosteriorParameters Probabilities = PosteriorParameters.Carried("vosk-posterior.json");
    private readonly VoskModel model;
    private readonly VoskOptions options;
    private readonly ConditionalWeakTable<Grammar, string> phrases = [];
    private bool disposed;

    /// <summary>Loads the library and the model.</summary>
    /// <exception cref="InvalidOperationException">The engine can't run here; <see cref="WhyNot"/> says the same as a value.</exception>
    public VoskRecognizer(VoskOptions options)
    {
        if (WhyNot(options) is { } reason)
        {
            throw new InvalidOperationException(reason);
        }

        this.options = options;
        model = VoskModel.Load(options.ModelFolder)
            ?? throw new InvalidOperationException($"libvosk did not load the model in {options.ModelFolder}; unpack it again");
    }

    /// <inheritdoc/>
    public string Name => "vosk";

    /// <summary>Null when library and model are here, else one line that says why not and what to do. Loads the library.</summary>
    public static string? WhyNot(VoskOptions options) => VoskModelFiles.WhyNot(options.ModelFolder) ?? VoskLibrary.Load(options.LibraryFile);

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        Phrases(grammar);
    }

    /// <inheritdoc/>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar) =>
        Evidence(samples, grammar) is { } found ? CalibratedPosterior.Decide(found, Probabilities) : Hearing.Nothing;

    /// <inheritdoc/>
    Evidence? IGathersEvidence.Evidence(ReadOnlySpan<float> samples, Grammar grammar) => Evidence(samples, grammar);

    private Evidence? Evidence(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        string list = Phrases(grammar);
        if (samples.IsEmpty)
        {
            return null;
        }

        using VoskDecoder decoder = model.Start(list, options.Alternatives);
        decoder.Accept(Pcm.To16Bits(samples)); // all at once: an end that it finds inside is of no interest
        return Judge(decoder.Finish(), grammar);
    }

    /// <summary>Frees the model.</summary>
    public void Dispose()
    {
        disposed = true;
        model.Dispose();
    }

    private string Phrases(Grammar grammar) => phrases.GetValue(grammar, g => VoskPhrases.Make(model, g));

    /// <summary>The alternatives inside the grammar as values; those outside it speak for "none of these".</summary>
    private Evidence? Judge(IReadOnlyList<VoskAlternative> alternatives, Grammar grammar)
    {
        if (alternatives.Count == 0 || alternatives.All(a => a.Words.Length == 0))
        {
            return null;
        }

        double highest = alternatives.Max(a => a.Score);
        WeightedWords[] all = [.. alternatives.Select(a => new WeightedWords(a.Words, (a.Score - highest) * options.ScoreScale))];
        WeightedWords[] inside = [.. all.Where(a => Matcher.Match(grammar, a.Words).Count > 0)];
        double mass = inside.Sum(a => Math.Exp(a.LogWeight)) / all.Sum(a => Math.Exp(a.LogWeight));
        string transcript = alternatives[0].Words;
        return new(
            [.. SentencePosterior.Share(inside, grammar, mass)
                .Where(c => c.Probability > 0)
                .Select(c => new FoundValue(c.Meaning, c.Words, new Dictionary<string, double> { [Facts.Score] = Math.Log(c.Probability) }))],
            new Dictionary<string, double> { [Facts.Bias] = 1, [Facts.Outside] = Math.Log(Math.Max(LeastOutside, 1 - mass)) },
            transcript,
            Matcher.IsPrefix(grammar, transcript));
    }
}
