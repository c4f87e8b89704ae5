namespace HandsFree.Audio.Endpointing;

/// <summary>What an <see cref="Endpointer"/> tells.</summary>
public abstract record EndpointEvent
{
    private EndpointEvent()
    {
    }

    /// <summary>Somebody began to speak.</summary>
    /// <param name="Position">Where the speech proper began, in samples at 16 kHz.</param>
    public sealed record SpeechStarted(long Position) : EndpointEvent;

    /// <summary>A short quiet: the answer may be over. Sent once for each pause.</summary>
    /// <param name="Pause">Number of the pause, for <see cref="Endpointer.CompleteAnswer"/>.</param>
    /// <param name="SoFar">The speech up to here.</param>
    public sealed record SpeechPaused(int Pause, SpeechSegment SoFar) : EndpointEvent;

    /// <summary>Speech goes on after a pause: what was made of it is void.</summary>
    /// <param name="Pause">Number of the pause that is over.</param>
    public sealed record SpeechResumed(int Pause) : EndpointEvent;

    /// <summary>The answer is over.</summary>
    /// <param name="Segment">All of it.</param>
    /// <param name="FollowedSoftly">After the last pause something softer was judged speech: other people's talk, or the speaker's last sounds,
    /// which what was made of the pause has not heard in full.</param>
    public sealed record SpeechEnded(SpeechSegment Segment, bool FollowedSoftly) : EndpointEvent;
}
