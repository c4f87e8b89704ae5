using HandsFree.Speech.Voice;
using Xunit;

namespace HandsFree.Speech.Tests.Contract;

/// <summary>Clips that the machine's own voices speak.</summary>
internal static class Spoken
{
    private const int Quiet = 8_000;

    /// <summary>The words by flite with half a second of quiet around; skips the test where flite is missing.</summary>
    internal static float[] ByFlite(string words)
    {
        Assert.SkipWhen(FliteVoice.WhyNot() is not null, FliteVoice.WhyNot() ?? "");
        return Padded(new FliteVoice(), words);
    }

    /// <summary>The words by espeak-ng in a language; skips the test where espeak-ng is missing.</summary>
    internal static float[] ByEspeak(string words, string language)
    {
        Assert.SkipWhen(EspeakVoice.WhyNot() is not null, EspeakVoice.WhyNot() ?? "");
        return Padded(new EspeakVoice(language), words);
    }

    private static float[] Padded(IVoice voice, string words) => [.. new float[Quiet], .. voice.Speak(words).Samples, .. new float[Quiet]];
}
