using System.Runtime.InteropServices;

namespace HandsFree.Audio.Endpointing;

/// <summary>The latest samples of a stream, addressed by their position in it.</summary>
internal sealed class SampleWindow
{
    private readonly List<float> _samples = [];

    /// <summary>Position of the oldest sample that is kept.</summary>
    public long Start { get; private set; }

    /// <summary>Position just after the latest sample.</summary>
    public long End => Start + _samples.Count;

    public void Append(ReadOnlySpan<float> samples) => _samples.AddRange(samples);

    /// <summary>Lets go of what lies before a position.</summary>
    public void DropBefore(long position)
    {
        int count = (int)Math.Clamp(position - Start, 0, _samples.Count);
        _samples.RemoveRange(0, count);
        Start += count;
    }

    /// <summary>Lets go of everything and goes on at a position.</summary>
    public void Restart(long position)
    {
        _samples.Clear();
        Start = position;
    }

    /// <summary>The samples between two positions, zeros where there are none.</summary>
    public float[] Copy(long from, long to)
    {
        float[] copy = new float[to - from];
        long first = Math.Max(from, Start);
        long last = Math.Min(to, End);
        if (last > first)
        {
            CollectionsMarshal.AsSpan(_samples)
                .Slice((int)(first - Start), (int)(last - first))
                .CopyTo(copy.AsSpan((int)(first - from)));
        }

        return copy;
    }
}
