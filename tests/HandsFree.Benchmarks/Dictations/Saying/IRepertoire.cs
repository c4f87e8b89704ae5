namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Where the aide's readings come from.</summary>
internal interface IRepertoire
{
    /// <summary>A reading of a sign that a voice can say.</summary>
    SpokenReading Draw(string sign, string voice, Random random);
}
