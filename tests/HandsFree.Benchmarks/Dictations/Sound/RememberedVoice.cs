using HandsFree.Speech.Voice;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>The program's voice, each text spoken once.</summary>
internal sealed class RememberedVoice(IVoice voice) : IVoice
{
    private readonly Dictionary<string, VoiceSound> spoken = [];

    /// <inheritdoc/>
    public string Name => voice.Name;

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        if (!spoken.TryGetValue(text, out VoiceSound? sound))
        {
            sound = voice.Speak(text);
            spoken.Add(text, sound);
        }

        return sound;
    }
}
