using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Readings that were recorded; of a sign that nobody was recorded reading, drawn ones, which a made voice will say.</summary>
internal sealed class ClipRepertoire(Clips clips, IRepertoire drawn) : IRepertoire
{
    /// <inheritdoc/>
    public SpokenReading Draw(string sign, string voice, Random random)
    {
        IReadOnlyList<SpokenReading> recorded = clips.Readings(sign, voice);
        return recorded.Count > 0 ? recorded[random.Next(recorded.Count)] : drawn.Draw(sign, voice, random);
    }
}
