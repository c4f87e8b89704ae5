using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;

namespace HandsFree.Speech.Words;

/// <summary>The built-in recogniser: a public speech encoder with one linear layer over the words of the grammars and the trade, then the
/// exact forward algorithm over the grammar. It needs no download; its weights are resources of this assembly. One thread at a time.</summary>
public sealed class WordsRecognizer : IRecognizer
{
    /// <summary>A grammar that repeats without end unfolds without end; an automaton that grew beyond this is made anew.</summary>
    private const int MostStates = 60_000;

    /// <summary>No sentence of ours is longer than 20 s.</summary>
    private const int MostSamples = 20 * 16_000;
    private readonly WordsModel model;
    private readonly WordsParameters parameters;
    private readonly Dictionary<Grammar, SentenceAutomaton> automata = [];
    private bool disposed;

    private WordsRecognizer(WordsModel model, WordsParameters parameters)
    {
        this.model = model;
        this.parameters = parameters;
    }

    /// <inheritdoc/>
    public string Name => "words";

    /// <summary>Loads the network; some hundred milliseconds.</summary>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    public static WordsRecognizer Open(int threads = 1) => new(WordsModel.Load(threads), WordsParameters.Measured);

    /// <summary>The words of grammars that the network has not learned, sorted: a sentence with one of them is none of these.</summary>
    public IReadOnlyList<string> NotLearned(IEnumerable<Grammar> grammars) => model.Missing(grammars);

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        string[] missing = model.Missing([grammar]);
        if (missing.Length == grammar.Words.Count)
        {
            throw new GrammarException($"{grammar.Name}: the engine words knows none of its words ({string.Join(", ", missing)}); use words of src/HandsFree.Speech/Words/Data/words.txt");
        }

        Automaton(grammar);
    }

    /// <inheritdoc/>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
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

        return Pcm.LoudestDecibels(Pcm.To16Bits(clean)) < parameters.SilenceDecibels
            ? Hearing.Nothing
            : WordsPosterior.Decide(Weigh(Logits(clean), grammar, parameters.Temperature), parameters);
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
    internal WordsEvidence Weigh(float[] rows, Grammar grammar, double temperature)
    {
        string free = Greedy.Text(rows, model.Width, model.Words.At);
        Rows.ToLogProbabilities(rows, model.Width, temperature);
        return new(CtcForward.Run(rows, model.Width, Automaton(grammar), parameters.Beam, parameters.MostWays), free);
    }

    private SentenceAutomaton Automaton(Grammar grammar)
    {
        if (!automata.TryGetValue(grammar, out SentenceAutomaton? automaton) || automaton.Size > MostStates)
        {
            automaton = new(grammar, model.Words.Place);
            automata[grammar] = automaton;
        }

        return automaton;
    }
}
