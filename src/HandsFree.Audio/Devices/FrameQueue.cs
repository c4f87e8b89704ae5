namespace HandsFree.Audio.Devices;

/// <summary>Frames between the thread that reads a device and the one that listens. Bounded: when it is full, the oldest frame is
/// dropped and counted, so that who listens is never further behind than its length and sees the gap in the times. Needs no memory
/// once it is made. For one writer and one reader.</summary>
public sealed class FrameQueue
{
    private readonly object gate = new();
    private readonly float[] samples;
    private readonly DateTimeOffset[] times;
    private int first;
    private int count;
    private long dropped;

    /// <summary>An empty queue.</summary>
    /// <param name="frames">How many it holds, from 1.</param>
    public FrameQueue(int frames)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frames, 1);
        samples = new float[frames * SoundFrame.Samples];
        times = new DateTimeOffset[frames];
    }

    /// <summary>Frames that nobody took in time.</summary>
    public long Dropped => Interlocked.Read(ref dropped);

    /// <summary>Frames that wait.</summary>
    public int Count
    {
        get
        {
            lock (gate)
            {
                return count;
            }
        }
    }

    /// <summary>Puts a frame at the end.</summary>
    public void Put(ReadOnlySpan<float> frame, DateTimeOffset at)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(frame.Length, SoundFrame.Samples);
        lock (gate)
        {
            if (count == times.Length)
            {
                first = (first + 1) % times.Length;
                count--;
                dropped++;
            }

            int place = (first + count) % times.Length;
            frame.CopyTo(samples.AsSpan(place * SoundFrame.Samples));
            times[place] = at;
            count++;
            Monitor.Pulse(gate);
        }
    }

    /// <summary>Takes the oldest frame; waits for it.</summary>
    /// <param name="frame">Filled.</param>
    /// <param name="at">Its time.</param>
    /// <param name="wait">How long to wait.</param>
    /// <returns>False where none came.</returns>
    public bool Take(Span<float> frame, out DateTimeOffset at, TimeSpan wait)
    {
        lock (gate)
        {
            if (count == 0 && (!Monitor.Wait(gate, wait) || count == 0))
            {
                at = default;
                return false;
            }

            samples.AsSpan(first * SoundFrame.Samples, SoundFrame.Samples).CopyTo(frame);
            at = times[first];
            first = (first + 1) % times.Length;
            count--;
            return true;
        }
    }
}
