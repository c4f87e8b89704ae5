namespace HandsFree.Speech.Voice;

/// <summary>The port of the read-back voices: words in, sound out. It plays nothing.</summary>
public interface IVoice
{
    /// <summary>"flite", "espeak-ng" or "windows".</summary>
    string Name { get; }

    /// <summary>Speaks one text.</summary>
    /// <param name="text">English; single digits are spoken one by one (see <see cref="SpokenText"/>). An empty text gives no samples.</param>
    /// <exception cref="VoiceException">The voice failed; says why. The text is still to be shown.</exception>
    VoiceSound Speak(string text);
}
