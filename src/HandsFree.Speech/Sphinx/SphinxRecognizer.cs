using HandsFree.Audio.Levels;
using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Sphinx;

/// <summary>PocketSphinx with a hard grammar and a phone loop beside it that refuses what is no sentence. It owns one decoder of
/// each kind and no lock: one thread at a time.</summary>
public sealed class SphinxRecognizer : IRecognizer, IGathersEvidence
{
    private static readonly PosteriorParameters Probabilities = PosteriorParameters.Carried("sphinx-posterior.json");
    private readonly SphinxDecoder decoder;
    private readonly PhoneLoop loop;
    private readonly SphinxSearches searches;
    private readonly SphinxParameters parameters;
    private bool disposed;

    /// <summary>Loads the model twice (about 30 MB each).</summary>
    /// <exception cref="InvalidOperationException">The engine can't run here; <see cref="WhyNot"/> says the same as a value.</exception>
    public SphinxRecognizer(SphinxOptions options)
        : this(options, SphinxParameters.Measured)
    {
    }

    internal SphinxRecognizer(SphinxOptions options, SphinxParameters parameters)
    {
        if (WhyNot(options) is { } reason)
        {
            throw new InvalidOperationException(reason);
        }

        string damaged = $"PocketSphinx did not load the model in {options.ModelFolder}; install the package pocketsphinx-en-us again";
        decoder = SphinxDecoder.Start(options.AcousticModel, options.Dictionary, parameters.GrammarSettings) ?? throw new InvalidOperationException(damaged);
        if (PhoneLoop.Start(options, parameters.LoopSettings) is not { } started)
        {
            decoder.Dispose();
            throw new InvalidOperationException(damaged);
        }

        loop = started;
        searches = new(decoder);
        this.parameters = parameters;
    }

    /// <inheritdoc/>
    public string Name => "sphinx";

    /// <summary>Null when the engine can run here, else one line that says why not and what to do.</summary>
    public static string? WhyNot(SphinxOptions options) => SphinxInstallation.WhyNot(options);

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        searches.Ready(grammar);
    }

    /// <inheritdoc/>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar) =>
        Evidence(samples, grammar) is { } found ? CalibratedPosterior.Decide(found, Probabilities) : Hearing.Nothing;

    /// <inheritdoc/>
    Evidence? IGathersEvidence.Evidence(ReadOnlySpan<float> samples, Grammar grammar) => Evidence(samples, grammar);

    /// <summary>Frees both decoders.</summary>
    public void Dispose()
    {
        disposed = true;
        decoder.Dispose();
        loop.Dispose();
    }

    /// <summary>What both decoders make of it; null when it is too quiet or one finds no speech.</summary>
    private Evidence? Evidence(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        searches.Use(grammar);
        short[] pcm = Pcm.To16Bits(samples);
        return Pcm.LoudestDecibels(pcm) >= parameters.SilenceDecibels
            && decoder.Decode(pcm, parameters.Hypotheses) is { } result
            && loop.PerFrame(pcm) is { } free
            ? new SphinxEvidence(result.Words, result.List, free - result.PerFrame)
                .Of(grammar, parameters, samples.Length / 16000.0, SpeechToNoise.Decibels(samples))
            : null;
    }
}
