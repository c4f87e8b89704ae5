using HandsFree.Audio.Levels;
using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Neural;

/// <summary>The encoder-decoder model under a hard grammar. Start it with <see cref="Open"/>.</summary>
public sealed class NeuralRecognizer : IRecognizer, IGathersEvidence
{
    private const int LeastSamples = 16_000;

    /// <summary>No sentence of ours is longer than 20 s, and the encoder's memory grows with the square of the length.</summary>
    private const int MostSamples = 20 * 16_000;
    private static readonly PosteriorParameters Parameters = PosteriorParameters.Carried("neural-posterior.json");
    private readonly NeuralModel model;
    private readonly GrammarSearch search;
    private readonly WrittenAutomata automata;
    private bool disposed;

    private NeuralRecognizer(NeuralModel model)
    {
        this.model = model;
        search = new(model, new SearchOptions());
        automata = new(model.Vocabulary);
    }

    /// <inheritdoc/>
    public string Name => "neural";

    /// <summary>Why the engine can't start from a folder, in one line, or null when it can.</summary>
    public static string? WhyNot(string folder)
    {
        string? missing = NeuralModel.Files.FirstOrDefault(f => !File.Exists(Path.Combine(folder, f)));
        return missing is null ? null : $"the neural model is not there: {Path.Combine(folder, missing)} is missing";
    }

    /// <summary>Loads the model, and prepares it the first time.</summary>
    /// <param name="folder">The model's folder.</param>
    /// <param name="cacheFolder">Where the prepared model is kept.</param>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    public static NeuralRecognizer Open(string folder, string cacheFolder, int threads = 1) =>
        new(NeuralModel.Load(folder, cacheFolder, threads));

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        WrittenAutomaton automaton = automata.Of(grammar);
        automaton.Tokens(automaton.Start);
    }

    /// <inheritdoc/>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar) =>
        samples.Length > MostSamples ? new(HearingOutcome.NoReading, [], "")
        : Found(samples, grammar) is { } found ? CalibratedPosterior.Decide(found, Parameters)
        : Hearing.Nothing;

    /// <inheritdoc/>
    Evidence? IGathersEvidence.Evidence(ReadOnlySpan<float> samples, Grammar grammar) =>
        Found(samples, grammar);

    private Evidence? Found(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        if (samples.Length > MostSamples)
        {
            return null;
        }

        float[] padded = new float[Math.Max(samples.Length, LeastSamples)];
        int start = (padded.Length - samples.Length) / 2;
        for (int i = 0; i < samples.Length; i++)
        {
            padded[start + i] = float.IsFinite(samples[i]) ? Math.Clamp(samples[i], -1, 1) : 0;
        }

        return Click.Is(padded) ? null
            : NeuralEvidence.Of(search.Run(padded, automata.Of(grammar)), samples.Length / 16000.0, SpeechToNoise.Decibels(padded));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!disposed)
        {
            disposed = true;
            model.Dispose();
        }
    }
}
