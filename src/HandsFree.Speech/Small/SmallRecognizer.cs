using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;
using HandsFree.Speech.Words;

namespace HandsFree.Speech.Small;

/// <summary>The project's own small recogniser: one run of a network of 2.4 million weights, then the exact forward algorithm over the
/// grammar. It needs no download; its weights are resources of this assembly. One thread at a time.</summary>
public sealed class SmallRecognizer : IRecognizer
{
    /// <summary>A grammar that repeats without end unfolds without end; an automaton that grew beyond this is made anew.</summary>
    private const int MostStates = 60_000;

    /// <summary>No sentence of ours is longer than 20 s.</summary>
    private const int MostSamples = 20 * 16_000;
    private readonly SmallModel model;
    private readonly SmallParameters parameters;
    private readonly Dictionary<Grammar, SentenceAutomaton> automata = [];
    private bool disposed;

    private SmallRecognizer(SmallModel model, SmallParameters parameters)
    {
        this.model = model;
        this.parameters = parameters;
    }

    /// <inheritdoc/>
    public string Name => "small";

    /// <summary>Loads the network; some tens of milliseconds.</summary>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    public static SmallRecognizer Open(int threads = 1) => new(SmallModel.Load(threads), SmallParameters.Measured);

    /// <summary>The words of grammars that the network has not learned, sorted: a sentence with one of them is none of these.</summary>
    public IReadOnlyList<string> NotLearned(IEnumerable<Grammar> grammars) => model.Missing(grammars);

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        Automaton(grammar);
    }

    /// <inheritdoc/>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        Automaton(grammar);
        if (samples.IsEmpty)
        {
            return Hearing.Nothing;
        }

        if (samples.Length > MostSamples)
        {
            return new(HearingOutcome.NoReading, [], "");
        }

        float[] clean = new float[samples.Length];
        for (int i = 0; i < samples.Length; i++)
        {
            clean[i] = float.IsFinite(samples[i]) ? Math.Clamp(samples[i], -1, 1) : 0;
        }

        return Pcm.LoudestDecibels(Pcm.To16Bits(clean)) < parameters.SilenceDecibels ? Hearing.Nothing : SmallPosterior.Decide(Weigh(Logits(clean), grammar, parameters.Temperature), parameters);
    }

    /// <summary>Frees the network.</summary>
    public void Dispose()
    {
        if (!disposed)
        {
            disposed = true;
            model.Dispose();
        }
    }

    /// <summary>The network's logits.</summary>
    internal float[] Logits(ReadOnlySpan<float> samples) => model.Run(samples);

    /// <summary>What the grammar makes of logits, before anything is decided; the logits are changed.</summary>
    internal SmallEvidence Weigh(float[] rows, Grammar grammar, double temperature)
    {
        string free = Greedy.Text(rows, model.Width, Word);
        Rows.ToLogProbabilities(rows, model.Width, temperature);
        return new(CtcForward.Run(rows, model.Width, Automaton(grammar), parameters.Beam, parameters.MostWays), free);
    }

    private string Word(int place) => place == SmallModel.Other ? Greedy.OtherWord : model.Words[place - 2];

    private SentenceAutomaton Automaton(Grammar grammar)
    {
        if (!automata.TryGetValue(grammar, out SentenceAutomaton? automaton) || automaton.Size > MostStates)
        {
            automaton = new(grammar, model.Place);
            automata[grammar] = automaton;
        }

        return automaton;
    }
}
