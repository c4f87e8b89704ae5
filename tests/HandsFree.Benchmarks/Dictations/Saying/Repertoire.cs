namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>The readings that a voice may be given to say: a finite list for each vital sign, drawn once, so that hearings repeat and
/// can be kept.</summary>
/// <param name="sayings">Ways of saying.</param>
/// <param name="perSign">Readings for each sign and voice.</param>
/// <param name="seed">Draws the values.</param>
internal sealed class Repertoire(Sayings sayings, int perSign, int seed) : IRepertoire
{
    private readonly Dictionary<(string, string), IReadOnlyList<SpokenReading>> drawn = [];

    /// <inheritdoc/>
    public SpokenReading Draw(string sign, string voice, Random random)
    {
        if (!drawn.TryGetValue((sign, voice), out IReadOnlyList<SpokenReading>? readings))
        {
            readings = [.. Enumerable.Range(0, perSign).Select(i => New(sign, voice, i))];
            drawn.Add((sign, voice), readings);
        }

        return readings[random.Next(readings.Count)];
    }

    private SpokenReading New(string sign, string voice, int index)
    {
        Random random = new(Steady.Number(seed, sign, voice, index));
        if (sign is "pulse" or "respirations" && random.NextDouble() < 0.1)
        {
            int counted = (sign == "pulse" ? 30 : 6) + random.Next(sign == "pulse" ? 16 : 5);
            return new SpokenReading(new Measured(sign, 2 * counted), sayings.Counted(sign, counted, 30, voice), counted);
        }

        Measured value = LikelyValues.Draw(sign, random);
        return new SpokenReading(value, sayings.Reading(value, voice, 0));
    }
}
