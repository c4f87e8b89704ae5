using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>An engine that hears every sound under every grammar only once.</summary>
/// <param name="engine">The engine; disposed of with this.</param>
/// <param name="stamp">What hearings depend on beside sound and grammar: engine, model, program.</param>
/// <param name="store">Where hearings are kept; disposed of with this.</param>
internal sealed class KeptHearings(IRecognizer engine, string stamp, HearingStore store) : IRecognizer
{
    /// <inheritdoc/>
    public string Name => engine.Name;

    /// <summary>Hearings that the engine did.</summary>
    public int Heard { get; private set; }

    /// <summary>Time that the engine took for them.</summary>
    public TimeSpan HearingTime { get; private set; }

    /// <summary>Hearings that were known.</summary>
    public int Known { get; private set; }

    /// <inheritdoc/>
    public void Prepare(Grammar grammar) => engine.Prepare(grammar);

    /// <inheritdoc/>
    public Speech.Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        string key = $"{Convert.ToHexStringLower(SHA256.HashData(MemoryMarshal.AsBytes(samples)))} {grammar.Name} {stamp}";
        if (store.Find(key, grammar) is { } known)
        {
            Known++;
            return known;
        }

        Heard++;
        long before = Stopwatch.GetTimestamp();
        Speech.Hearing hearing = engine.Hear(samples, grammar);
        HearingTime += Stopwatch.GetElapsedTime(before);
        store.Keep(key, hearing, grammar);
        return hearing;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        store.Dispose();
        engine.Dispose();
    }
}
