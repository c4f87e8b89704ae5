using HandsFree.Audio.Devices;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <summary>What the threads around the session loop post into its queue.</summary>
internal abstract record SessionEvent
{
    /// <summary>Somebody began to speak.</summary>
    /// <param name="Listening">Number of the listening that was in force.</param>
    public sealed record SpeechBegan(int Listening) : SessionEvent;

    /// <summary>Speech is over.</summary>
    /// <param name="Listening">Number of the listening that was in force when it began.</param>
    /// <param name="Heard">What was made of it; null where there is nothing to tell the dialogue.</param>
    /// <param name="Samples">The speech, 16 kHz; empty where nothing was made of it.</param>
    public sealed record SpeechOver(int Listening, DialogueEvent? Heard, ReadOnlyMemory<float> Samples = default) : SessionEvent;

    /// <summary>Something was typed: the keys' way to say anything that can be spoken, also while the program speaks.</summary>
    /// <param name="Text">What.</param>
    public sealed record Typed(string Text) : SessionEvent;

    /// <summary>The key (or foot switch) of the microphone was pressed.</summary>
    public sealed record TalkKey : SessionEvent;

    /// <summary>A sound device went, or came back.</summary>
    /// <param name="Which">Microphone or loudspeaker.</param>
    /// <param name="WhyNot">Null where it works again, else why it does not.</param>
    public sealed record DeviceChanged(SoundFlow Which, string? WhyNot) : SessionEvent;

    /// <summary>All that was to be said has been played.</summary>
    public sealed record PlaybackEnded : SessionEvent;

    /// <summary>A timer that the dialogue started has run out.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Start">Number of its start; an older one was stopped or started anew.</param>
    public sealed record TimerElapsed(string Name, int Start) : SessionEvent;

    /// <summary>It was quiet for the home's time.</summary>
    /// <param name="Watch">Number of the watch; an older one is void.</param>
    public sealed record QuietOver(int Watch) : SessionEvent;

    /// <summary>No more sound will come from the microphone.</summary>
    /// <param name="Failure">What broke on the ear's thread; null where the microphone just ended.</param>
    public sealed record EarEnded(Exception? Failure) : SessionEvent;
}
