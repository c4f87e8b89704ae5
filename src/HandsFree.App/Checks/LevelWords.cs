using System.Globalization;
using HandsFree.Audio.Levels;

namespace HandsFree.App.Checks;

/// <summary>What a level means for whoever wears the microphone, and what to do. The limits are our own: from -40 dBFS down and with less
/// than 10 dB over the noise our recordings are heard worse.</summary>
internal static class LevelWords
{
    private const double TooQuietDbfs = -40;
    private const double TooLoudDbfs = -6;
    private const double MostClipped = 0.001;
    private const double TooNoisyDecibels = 10;

    /// <summary>Of a piece of speech.</summary>
    /// <param name="samples">With a little quiet around it, 16 kHz mono.</param>
    public static (CheckState State, string Text) Of(ReadOnlySpan<float> samples)
    {
        Level level = LevelMeter.Measure(samples);
        double speech = SpeechLevel.ActiveDbfs(samples);
        double above = SpeechToNoise.Decibels(samples);
        string numbers = string.Create(CultureInfo.InvariantCulture, $"speech {speech:0} dBFS, {above:0} dB over the noise");
        return level.ClippedShare > MostClipped || speech > TooLoudDbfs ? (CheckState.Warning, $"too loud ({numbers}): move the microphone away from the mouth, or turn it down")
            : speech < TooQuietDbfs ? (CheckState.Warning, $"too quiet ({numbers}): move the microphone to a thumb's width from the mouth's corner")
            : above < TooNoisyDecibels ? (CheckState.Warning, $"too noisy ({numbers}): bring the microphone to the mouth's corner, close the door, or take a headset")
            : (CheckState.Ok, $"good ({numbers})");
    }

    /// <summary>A meter of 30 signs, from -60 dBFS to full scale.</summary>
    public static string Meter(double dbfs)
    {
        const int Signs = 30;
        int full = (int)Math.Round(Math.Clamp((dbfs + 60) / 60, 0, 1) * Signs);
        return new string('#', full).PadRight(Signs, '.');
    }
}
