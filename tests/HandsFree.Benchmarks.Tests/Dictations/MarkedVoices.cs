using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>Voices that buzz in syllables; the sound of each text has a length of its own, by which <see cref="SoundReader"/> knows what
/// was said.</summary>
internal sealed class MarkedVoices : IVoiceBox
{
    private const int Shortest = 20_000;

    // 200 ms, the last 50 of them quiet, so that the sound is not taken for a steady noise.
    private const int Syllable = 3_200;
    private const int Buzz = 2_400;

    private readonly List<string> texts = [];

    public IReadOnlyList<string> Names { get; } = ["one", "two"];

    public float[] Speak(string voice, string text)
    {
        int mark = texts.IndexOf(text);
        if (mark < 0)
        {
            mark = texts.Count;
            texts.Add(text);
        }

        int length = Shortest + mark;
        return [.. Enumerable.Range(0, length).Select(i => i % Syllable >= Buzz && i < length - Syllable ? 0 : i % 100 < 50 ? 0.4f : -0.4f)];
    }

    /// <summary>The text of a piece of speech; null where it is none of these.</summary>
    public string? TextOf(ReadOnlySpan<float> samples)
    {
        int first = 0;
        int last = samples.Length - 1;
        while (first < samples.Length && samples[first] == 0)
        {
            first++;
        }

        while (last > first && samples[last] == 0)
        {
            last--;
        }

        int mark = last - first + 1 - Shortest;
        return mark >= 0 && mark < texts.Count ? texts[mark] : null;
    }
}
