namespace HandsFree.Audio.Endpointing;

/// <summary>Follows the level of the noise under speech: the least of the smoothed frame levels of the last four seconds, which speech always
/// leaves in the gaps between its sounds (after the minimum statistics of R. Martin, IEEE Trans. Speech Audio Process. 9(5), 2001; much
/// simplified).</summary>
internal sealed class NoiseFloor
{
    private const int WindowFrames = 125;

    /// <summary>The least of many levels lies below their mean; measured on pink noise.</summary>
    private const double BiasDecibel = 2;

    private readonly double[] _levels = new double[WindowFrames];
    private int _count;
    private double _smooth;

    /// <summary>Takes a frame's level in dBFS and returns the floor in dBFS.</summary>
    public double Next(double level)
    {
        _smooth = _count == 0 ? level : (0.6 * _smooth) + (0.4 * level);
        _levels[_count % WindowFrames] = _smooth;
        _count++;
        double least = _smooth;
        foreach (double past in _levels.AsSpan(0, Math.Min(_count, WindowFrames)))
        {
            least = Math.Min(least, past);
        }

        return least + BiasDecibel;
    }

    public void Reset() => _count = 0;
}
