namespace HandsFree.Audio.Endpointing;

/// <summary>Decides from probabilities and levels alone where speech begins, pauses and ends. Knows no samples; positions count them.</summary>
internal sealed class SpeechTracker(EndpointerOptions options)
{
    private readonly int _minimumSpeech = SampleTime.Samples(options.MinimumSpeech);
    private readonly int _clickQuiet = SampleTime.Samples(options.ClickQuiet);
    private readonly int _pauseQuiet = SampleTime.Samples(options.PauseQuiet);
    private readonly int _completeTimeout = SampleTime.Samples(options.CompleteTimeout);
    private readonly int _incompleteTimeout = SampleTime.Samples(options.IncompleteTimeout);
    private readonly int _maximumSpeech = SampleTime.Samples(options.MaximumSpeech);
    private readonly NearVoice _near = new(options.LoudnessRange);
    private bool _started;
    private bool _paused;

    /// <summary>Just after the last frame that was judged speech, near or not.</summary>
    private long _voicedUntil = -1;

    /// <summary>Whether a frame has begun what may become speech.</summary>
    public bool IsRising { get; private set; }

    /// <summary>Whether speech has begun and not ended.</summary>
    public bool IsOpen => _started;

    /// <summary>Where the speech, or what may become it, begins. It moves on when the speaker turns out to be louder than what came before.</summary>
    public long Start => _near.Start;

    /// <summary>Just after its last frame.</summary>
    public long End { get; private set; }

    /// <summary>Samples judged speech.</summary>
    public long SpeechSamples => _near.Samples;

    /// <summary>Whether something softer than the speaker was judged speech since the last pause began.</summary>
    public bool FollowedSoftly { get; private set; }

    /// <summary>Takes the next frame.</summary>
    /// <param name="probability">Of speech.</param>
    /// <param name="level">Of the frame and the two before it, dBFS.</param>
    /// <param name="from">Position of the frame's first sample.</param>
    /// <param name="to">Position just after its last.</param>
    /// <param name="complete">Whether the answer so far is complete: which time-out is in force.</param>
    public TrackerChange Next(float probability, double level, long from, long to, bool complete)
    {
        bool voiced = probability >= options.OnThreshold || (IsRising && _voicedUntil == from && probability >= options.OffThreshold);
        if (!IsRising)
        {
            if (!voiced)
            {
                return TrackerChange.None;
            }

            IsRising = true;
            _near.Begin();
        }

        bool speech = voiced && _near.Take(level, from, to);
        FollowedSoftly |= voiced && !speech && _paused;
        _voicedUntil = voiced ? to : _voicedUntil;
        End = speech ? to : End;
        return _started ? Going(speech, to, complete) : Rising(to);
    }

    /// <summary>Forgets the speech.</summary>
    public void Reset()
    {
        IsRising = false;
        _started = false;
        _paused = false;
        FollowedSoftly = false;
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
            FollowedSoftly = false;
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
