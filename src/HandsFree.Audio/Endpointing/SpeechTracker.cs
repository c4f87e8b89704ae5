namespace HandsFree.Audio.Endpointing;

/// <summary>Decides from the probabilities alone where speech begins, pauses and ends. Knows no samples; positions count them.</summary>
internal sealed class SpeechTracker(EndpointerOptions options)
{
    private readonly int _minimumSpeech = SampleTime.Samples(options.MinimumSpeech);
    private readonly int _clickQuiet = SampleTime.Samples(options.ClickQuiet);
    private readonly int _pauseQuiet = SampleTime.Samples(options.PauseQuiet);
    private readonly int _completeTimeout = SampleTime.Samples(options.CompleteTimeout);
    private readonly int _incompleteTimeout = SampleTime.Samples(options.IncompleteTimeout);
    private readonly int _maximumSpeech = SampleTime.Samples(options.MaximumSpeech);
    private bool _started;
    private bool _paused;

    /// <summary>Whether a frame has begun what may become speech.</summary>
    public bool IsRising { get; private set; }

    /// <summary>Whether speech has begun and not ended.</summary>
    public bool IsOpen => _started;

    /// <summary>Where the speech, or what may become it, begins.</summary>
    public long Start { get; private set; }

    /// <summary>Just after its last frame.</summary>
    public long End { get; private set; }

    /// <summary>Samples judged speech.</summary>
    public long SpeechSamples { get; private set; }

    /// <summary>Takes the next frame.</summary>
    /// <param name="probability">Of speech.</param>
    /// <param name="from">Position of the frame's first sample.</param>
    /// <param name="to">Position just after its last.</param>
    /// <param name="complete">Whether the answer so far is complete: which time-out is in force.</param>
    public TrackerChange Next(float probability, long from, long to, bool complete)
    {
        bool inPause = End < from;
        bool speech = probability >= options.OnThreshold || (IsRising && !inPause && probability >= options.OffThreshold);
        if (!IsRising)
        {
            if (!speech)
            {
                return TrackerChange.None;
            }

            IsRising = true;
            Start = from;
            SpeechSamples = 0;
        }

        if (speech)
        {
            End = to;
            SpeechSamples += to - from;
        }

        return _started ? Going(speech, to, complete) : Rising(to);
    }

    /// <summary>Forgets the speech.</summary>
    public void Reset()
    {
        IsRising = false;
        _started = false;
        _paused = false;
    }

    private TrackerChange Rising(long to)
    {
        if (SpeechSamples >= _minimumSpeech)
        {
            _started = true;
            return TrackerChange.Started;
        }

        IsRising = to - End < _clickQuiet;
        return TrackerChange.None;
    }

    private TrackerChange Going(bool speech, long to, bool complete)
    {
        long quiet = to - End;
        if (to - Start >= _maximumSpeech && quiet < _pauseQuiet)
        {
            return TrackerChange.TooLong;
        }

        if (speech)
        {
            bool resumed = _paused;
            _paused = false;
            return resumed ? TrackerChange.Resumed : TrackerChange.None;
        }

        if (_paused)
        {
            return quiet >= (complete ? _completeTimeout : _incompleteTimeout) ? TrackerChange.Ended : TrackerChange.None;
        }

        _paused = quiet >= _pauseQuiet;
        return _paused ? TrackerChange.Paused : TrackerChange.None;
    }
}
