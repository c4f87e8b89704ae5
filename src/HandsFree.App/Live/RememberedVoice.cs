using HandsFree.Speech.Voice;

namespace HandsFree.App.Live;

/// <summary>A voice that keeps what it said: a fixed phrase is made once. It forgets the oldest first.</summary>
/// <param name="voice">Speaks what is not kept.</param>
/// <param name="most">Texts that are kept at most.</param>
internal sealed class RememberedVoice(IVoice voice, int most = 200) : IVoice
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, VoiceSound> kept = [];
    private readonly Queue<string> order = [];

    /// <inheritdoc/>
    public string Name => voice.Name;

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        lock (gate)
        {
            if (kept.TryGetValue(text, out VoiceSound? sound))
            {
                return sound;
            }

            sound = voice.Speak(text);
            if (order.Count == most)
            {
                kept.Remove(order.Dequeue());
            }

            order.Enqueue(text);
            return kept[text] = sound;
        }
    }
}
