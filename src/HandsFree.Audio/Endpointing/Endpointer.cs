using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>Cuts a stream into the pieces in which somebody speaks. Fed by one thread, which also runs the sink;
/// <see cref="CompleteAnswer"/> may come from any.</summary>
public sealed class Endpointer
{
    private readonly ISpeechDetector _detector;
    private readonly EndpointerOptions _options;
    private readonly Action<EndpointEvent> _sink;
    private readonly SpeechTracker _tracker;
    private readonly SampleWindow _window = new();
    private readonly FrameLevel _level = new();
    private readonly int _padding;
    private long _judged;
    private int _pause;
    private volatile int _completePause;

    /// <summary>An endpointer for one stream.</summary>
    /// <param name="detector">Judges the frames; not disposed here.</param>
    /// <param name="options">Thresholds and times.</param>
    /// <param name="sink">Gets each event while the samples that caused it are fed; it may call <see cref="CompleteAnswer"/>.</param>
    /// <exception cref="ArgumentException">Options that contradict each other.</exception>
    public Endpointer(ISpeechDetector detector, EndpointerOptions options, Action<EndpointEvent> sink)
    {
        ArgumentNullException.ThrowIfNull(detector);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(sink);
        options.Validate();
        _detector = detector;
        _options = options;
        _sink = sink;
        _tracker = new SpeechTracker(options);
        _padding = SampleTime.Samples(options.Padding);
    }

    /// <summary>Position just after the last sample that was fed.</summary>
    public long Position => _window.End;

    /// <summary>Takes the next samples, any number of them.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1].</param>
    public void Feed(ReadOnlySpan<float> samples)
    {
        while (!samples.IsEmpty)
        {
            int count = (int)Math.Min(samples.Length, _judged + ISpeechDetector.FrameSamples - _window.End);
            _window.Append(samples[..count]);
            samples = samples[count..];
            if (_window.End - _judged == ISpeechDetector.FrameSamples)
            {
                Judge();
            }
        }
    }

    /// <summary>Says that what was spoken up to a pause is complete and can't go on: the shorter time-out is in force until speech goes on.
    /// A number of an earlier pause changes nothing.</summary>
    /// <param name="pause">The number that came with <see cref="EndpointEvent.SpeechPaused"/>.</param>
    public void CompleteAnswer(int pause) => _completePause = pause;

    /// <summary>The stream has ended: ends the speech that is open. What is fed afterwards follows a gap.</summary>
    public void Flush()
    {
        if (_window.End > _judged)
        {
            Judge();
        }

        if (_tracker.IsOpen)
        {
            End(SegmentEnd.StreamEnded);
        }

        Skip(0);
    }

    /// <summary>Passes over samples that are not to be heard (the program's own voice, a gap in the stream) and forgets speech that is open.</summary>
    /// <param name="samples">How many; positions go on behind them.</param>
    public void Skip(long samples)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(samples);
        _detector.Reset();
        _tracker.Reset();
        _level.Reset();
        _window.Restart(_window.End + samples);
        _judged = _window.End;
    }

    private void Judge()
    {
        float[] frame = _window.Copy(_judged, _judged + ISpeechDetector.FrameSamples);
        float probability = _detector.Probability(frame);
        long from = _judged;
        _judged = _window.End;
        switch (_tracker.Next(probability, _level.Next(frame), from, _judged, _pause > 0 && _completePause == _pause))
        {
            case TrackerChange.Started:
                _sink(new EndpointEvent.SpeechStarted(_tracker.Start));
                break;
            case TrackerChange.Paused:
                _pause++;
                _sink(new EndpointEvent.SpeechPaused(_pause, Segment(SegmentEnd.Pause)));
                break;
            case TrackerChange.Resumed:
                _sink(new EndpointEvent.SpeechResumed(_pause));
                break;
            case TrackerChange.Ended:
                End(SegmentEnd.Quiet);
                break;
            case TrackerChange.TooLong:
                End(SegmentEnd.TooLong);
                break;
        }

        _window.DropBefore((_tracker.IsRising ? _tracker.Start : _judged) - _padding);
    }

    private void End(SegmentEnd reason)
    {
        var ended = new EndpointEvent.SpeechEnded(Segment(reason), _tracker.FollowedSoftly);
        _tracker.Reset();
        _window.DropBefore(ended.Segment.SpeechEnd);
        _sink(ended);
    }

    private SpeechSegment Segment(SegmentEnd reason)
    {
        long start = _tracker.Start;
        long end = _tracker.End;
        float[] samples = _window.Copy(start - _padding, end + _padding);
        ReadOnlySpan<float> speech = samples.AsSpan(_padding, (int)(end - start));
        Level level = LevelMeter.Measure(speech) with { RmsDbfs = SpeechLevel.ActiveDbfs(speech) };
        return new SpeechSegment(samples, start - _padding, start, end, SampleTime.Of(_tracker.SpeechSamples), level, reason);
    }
}
