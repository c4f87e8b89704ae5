using System.Runtime.Versioning;
using System.Speech.AudioFormat;
using System.Speech.Synthesis;

namespace HandsFree.Speech.Voice;

/// <summary>The voice that Windows brings.</summary>
[SupportedOSPlatform("windows")]
public sealed class WindowsVoice : IVoice
{
    /// <inheritdoc/>
    public string Name => "windows";

    /// <summary>Null when a voice is installed, else one line that says why not.</summary>
    public static string? WhyNot()
    {
        try
        {
            using var synthesizer = new SpeechSynthesizer();
            return synthesizer.GetInstalledVoices().Any(v => v.Enabled)
                ? null
                : "Windows has no voice installed; add one under Settings, Time & language, Speech";
        }
        catch (PlatformNotSupportedException e)
        {
            return $"Windows speech is not available here: {e.Message}";
        }
    }

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        string words = SpokenText.ForSpeech(text);
        if (words.Length == 0)
        {
            return VoiceSound.Silent;
        }

        using var synthesizer = new SpeechSynthesizer();
        using var sound = new MemoryStream();
        try
        {
            synthesizer.SetOutputToAudioStream(sound, new SpeechAudioFormatInfo(VoiceSound.SampleRate, AudioBitsPerSample.Sixteen, AudioChannel.Mono));
            synthesizer.Speak(words);
        }
        catch (InvalidOperationException e)
        {
            throw new VoiceException($"Windows did not speak: {e.Message}", e);
        }

        ReadOnlySpan<byte> bytes = sound.GetBuffer().AsSpan(0, (int)sound.Length);
        var samples = new float[bytes.Length / 2];
        for (int i = 0; i < samples.Length; i++)
        {
            samples[i] = BitConverter.ToInt16(bytes[(2 * i)..]) / 32768f;
        }

        return new(samples);
    }
}
