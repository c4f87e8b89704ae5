using HandsFree.Speech.Voice;

namespace HandsFree.Scenarios.Session;

/// <summary>Every word is 200 ms of a loud buzz.</summary>
internal sealed class BuzzingVoice : IVoice
{
    public string Name => "buzz";

    public VoiceSound Speak(string text) =>
        new([.. Enumerable.Range(0, text.Split(' ').Length * VoiceSound.SampleRate / 5).Select(i => i % 100 < 50 ? 0.5f : -0.5f)]);
}
