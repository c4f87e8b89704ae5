namespace HandsFree.Audio.Endpointing;

/// <summary>Tells the speaker from the talk behind her by loudness: what is softer than the loudest of an utterance by more than a range is
/// not hers. The microphone is close to her, so in a room where others talk she stands above them.</summary>
/// <param name="rangeDecibels">The range.</param>
internal sealed class NearVoice(double rangeDecibels)
{
    private readonly List<(long From, long To, double Level)> _frames = [];
    private double _loudest;

    /// <summary>Where the first frame begins that is within the range of the loudest.</summary>
    public long Start => _frames[0].From;

    /// <summary>Samples of the frames that were taken, from <see cref="Start"/> on.</summary>
    public long Samples => _frames.Sum(f => f.To - f.From);

    /// <summary>An utterance begins with the next frame.</summary>
    public void Begin()
    {
        _frames.Clear();
        _loudest = double.NegativeInfinity;
    }

    /// <summary>Takes a frame of speech; false where it is not the speaker's. What came before and turns out to be too soft is let go.</summary>
    /// <param name="level">dBFS.</param>
    /// <param name="from">Position of its first sample.</param>
    /// <param name="to">Position just after its last.</param>
    public bool Take(double level, long from, long to)
    {
        _loudest = Math.Max(_loudest, level);
        if (level < _loudest - rangeDecibels)
        {
            return false;
        }

        _frames.Add((from, to, level));
        _frames.RemoveRange(0, _frames.FindIndex(f => f.Level >= _loudest - rangeDecibels));
        return true;
    }
}
