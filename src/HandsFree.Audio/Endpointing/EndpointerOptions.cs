namespace HandsFree.Audio.Endpointing;

/// <summary>When speech begins and when it has ended. All times are rounded up to frames of 32 ms.</summary>
public sealed record EndpointerOptions
{
    /// <summary>Speech begins, and goes on after a pause, with a frame of at least this probability.</summary>
    public float OnThreshold { get; init; } = 0.5f;

    /// <summary>Speech pauses with a frame below this probability; the distance to the other keeps it from flickering.</summary>
    public float OffThreshold { get; init; } = 0.35f;

    /// <summary>Speech that is softer than the loudest of the utterance by more than this, dB, is other people's: talk in the room would else
    /// stand before and after what the speaker says, and an utterance would not end. Of 225 recordings, 15 dB cuts off no end, 12 dB two, 9 dB
    /// seventeen, clean as well as in babble.</summary>
    public double LoudnessRange { get; init; } = 15;

    /// <summary>Less speech than this is a click.</summary>
    public TimeSpan MinimumSpeech { get; init; } = TimeSpan.FromMilliseconds(64);

    /// <summary>A click is given up after so much quiet.</summary>
    public TimeSpan ClickQuiet { get; init; } = TimeSpan.FromMilliseconds(128);

    /// <summary>Quiet after which <see cref="EndpointEvent.SpeechPaused"/> is sent, so that decoding can begin.</summary>
    public TimeSpan PauseQuiet { get; init; } = TimeSpan.FromMilliseconds(200);

    /// <summary>Quiet that ends an answer which can't go on (VoiceXML 2.0, completetimeout).</summary>
    public TimeSpan CompleteTimeout { get; init; } = TimeSpan.FromMilliseconds(500);

    /// <summary>Quiet that ends an answer which may go on, or of which nothing is known yet (VoiceXML 2.0, incompletetimeout).</summary>
    public TimeSpan IncompleteTimeout { get; init; } = TimeSpan.FromMilliseconds(900);

    /// <summary>Speech that goes on longer is ended.</summary>
    public TimeSpan MaximumSpeech { get; init; } = TimeSpan.FromSeconds(15);

    /// <summary>Quiet that a segment has before and after the speech: the stream's own, zeros where it has none.</summary>
    public TimeSpan Padding { get; init; } = TimeSpan.FromMilliseconds(400);

    /// <summary>Throws where the values contradict each other.</summary>
    /// <exception cref="ArgumentException">Names the values.</exception>
    public void Validate()
    {
        if (OffThreshold > OnThreshold)
        {
            throw new ArgumentException($"OffThreshold {OffThreshold} is above OnThreshold {OnThreshold}.");
        }

        if (PauseQuiet > CompleteTimeout || CompleteTimeout > IncompleteTimeout)
        {
            throw new ArgumentException(
                $"PauseQuiet {PauseQuiet}, CompleteTimeout {CompleteTimeout}, IncompleteTimeout {IncompleteTimeout} must not decrease.");
        }

        if (MinimumSpeech <= TimeSpan.Zero || MinimumSpeech > MaximumSpeech || Padding < TimeSpan.Zero)
        {
            throw new ArgumentException($"MinimumSpeech {MinimumSpeech}, MaximumSpeech {MaximumSpeech}, Padding {Padding} don't fit.");
        }
    }
}
