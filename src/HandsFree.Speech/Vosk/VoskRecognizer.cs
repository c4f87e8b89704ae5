using System.Runtime.CompilerServices;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Vosk;

/// <summary>Vosk with a phrase list made of the grammar. The list is no hard grammar, so that every alternative is matched against
/// the grammar again and what does not match counts as "none of these". One thread at a time.</summary>
public sealed class VoskRecognizer : IRecognizer
{
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
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        string list = Phrases(grammar);
        if (samples.IsEmpty)
        {
            return Hearing.Nothing;
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

    /// <summary>Shares the probability out over all alternatives; those outside the grammar keep their share as "none of these".</summary>
    private Hearing Judge(IReadOnlyList<VoskAlternative> alternatives, Grammar grammar)
    {
        if (alternatives.Count == 0 || alternatives.All(a => a.Words.Length == 0))
        {
            return Hearing.Nothing;
        }

        double highest = alternatives.Max(a => a.Score);
        WeightedWords[] all = [.. alternatives.Select(a => new WeightedWords(a.Words, (a.Score - highest) * options.ScoreScale))];
        WeightedWords[] inside = [.. all.Where(a => Matcher.Match(grammar, a.Words).Count > 0)];
        double mass = inside.Sum(a => Math.Exp(a.LogWeight)) / all.Sum(a => Math.Exp(a.LogWeight));
        IReadOnlyList<Candidate> candidates = SentencePosterior.Share(inside, grammar, mass);
        string transcript = alternatives[0].Words;
        HearingOutcome outcome = mass >= 0.5 ? HearingOutcome.Heard
            : Matcher.IsPrefix(grammar, transcript) ? HearingOutcome.Partial
            : HearingOutcome.NoReading;
        return new(outcome, candidates, transcript);
    }
}
