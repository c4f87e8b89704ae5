using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Scripted;

/// <summary>Hears what it was told to hear, in order: for tests and benchmarks of what comes after the engine.</summary>
/// <param name="answers">One for each call of <see cref="Hear"/>.</param>
public sealed class ScriptedRecognizer(IEnumerable<Hearing> answers) : IRecognizer
{
    private readonly Queue<Hearing> queue = new(answers);
    private readonly List<Grammar> asked = [];
    private readonly List<Grammar> prepared = [];
    private bool disposed;

    /// <inheritdoc/>
    public string Name => "scripted";

    /// <summary>The grammars of the calls so far, in order.</summary>
    public IReadOnlyList<Grammar> Asked => asked;

    /// <summary>The grammars that were made ready, in order.</summary>
    public IReadOnlyList<Grammar> Prepared => prepared;

    /// <summary>How many answers are left.</summary>
    public int Left => queue.Count;

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        ArgumentNullException.ThrowIfNull(grammar);
        prepared.Add(grammar);
    }

    /// <summary>Gives the next answer, whatever the samples.</summary>
    /// <exception cref="InvalidOperationException">The script has come to its end.</exception>
    public Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        asked.Add(grammar);
        return queue.TryDequeue(out Hearing? answer)
            ? answer
            : throw new InvalidOperationException($"the script had no answer left for hearing number {asked.Count}");
    }

    /// <inheritdoc/>
    public void Dispose() => disposed = true;
}
