using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>The level of a frame together with the two before it: about as long as a short syllable.</summary>
internal sealed class FrameLevel
{
    private readonly double[] _powers = new double[3];
    private int _next;

    /// <summary>dBFS.</summary>
    /// <param name="frame">The next frame.</param>
    public double Next(ReadOnlySpan<float> frame)
    {
        _powers[_next] = LevelMeter.MeanSquare(frame);
        _next = (_next + 1) % _powers.Length;
        return LevelMeter.ToDecibel(Math.Sqrt(_powers.Sum() / _powers.Length));
    }

    /// <summary>Goes back to silence.</summary>
    public void Reset() => Array.Clear(_powers);
}
