using HandsFree.Audio.Wav;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Recordings of a folder: each speaker says what he was recorded saying. For words that he was not recorded saying, a made
/// voice stands in, always the same one for him.</summary>
/// <param name="clips">The recordings.</param>
/// <param name="others">The voices that stand in.</param>
internal sealed class ClipVoices(Clips clips, IVoiceBox others) : IVoiceBox
{
    private readonly Dictionary<string, float[]> read = [];

    /// <inheritdoc/>
    public IReadOnlyList<string> Names => clips.Speakers;

    /// <inheritdoc/>
    public float[] Speak(string voice, string text) =>
        clips.Saying(voice, text) is { } file ? Read(file) : others.Speak(Saying.Steady.Of(others.Names, voice), text);

    private float[] Read(string file)
    {
        if (!read.TryGetValue(file, out float[]? samples))
        {
            samples = WavReader.Read(file) is { Clip: { } clip } ? clip.Samples : throw new IOException($"{file} can't be read");
            read.Add(file, samples);
        }

        return samples;
    }
}
