namespace HandsFree.Audio.Endpointing;

/// <summary>Follows the level of the noise under speech: the least of the smoothed frame levels of the last four seconds, which speech always
/// leaves in the gaps between its sounds (after the minimum statistics of R. Martin, IEEE Trans. Speech Audio Process. 9(5), 2001; much
/// simplified).</summary>
internal sealed class NoiseFloor
{
    private const int WindowFrames = 125;
    private const int AssumedFrames = 31;

    /// <summary>A stream is taken to begin after this quiet, for its first second: else speech that it begins with would be its floor.</summary>
    private const double AssumedDbfs = -60;

    /// <summary>The least of many levels lies below their mean; measured on pink noise.</summary>
    private const double BiasDecibel = 2;

    private readonly double[] _levels = new double[WindowFrames];
    private int _next;
    private double _smooth;

    public NoiseFloor() => Reset();

    /// <summary>Takes a frame's level in dBFS and returns the floor in dBFS.</summary>
    public double Next(double level)
    {
        _smooth = double.IsNaN(_smooth) ? level : (0.6 * _smooth) + (0.4 * level);
        _levels[_next] = _smooth;
        _next = (_next + 1) % WindowFrames;
        double least = _smooth;
        foreach (double past in _levels)
        {
            least = Math.Min(least, past);
        }

        return least + BiasDecibel;
    }

    /// <summary>Goes back to the beginning of a stream.</summary>
    public void Reset()
    {
        Array.Fill(_levels, double.PositiveInfinity);
        _levels[0] = AssumedDbfs;
        _next = WindowFrames - AssumedFrames;
        _smooth = double.NaN;
    }

    /// <summary>Lets go of the assumption, where enough has been heard.</summary>
    public void TrustWhatWasHeard() => _levels[0] = _levels[0] == AssumedDbfs ? double.PositiveInfinity : _levels[0];
}
