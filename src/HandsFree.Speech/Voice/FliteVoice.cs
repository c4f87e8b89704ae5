using System.Runtime.InteropServices;

namespace HandsFree.Speech.Voice;

/// <summary>flite's voice slt, in process. May be used from any thread: flite itself is not thread-safe, so that all voices of
/// this kind wait for one another. The same text always gives the same samples.</summary>
public sealed class FliteVoice : IVoice
{
    private static readonly Lock Gate = new();
    private static nint slt;

    /// <summary>Loads flite and the voice.</summary>
    /// <exception cref="VoiceException">flite is not here; <see cref="WhyNot"/> says the same as a value.</exception>
    public FliteVoice()
    {
        if (WhyNot() is { } reason)
        {
            throw new VoiceException(reason);
        }

        lock (Gate)
        {
            slt = slt == 0 ? Register() : slt;
        }
    }

    /// <inheritdoc/>
    public string Name => "flite";

    /// <summary>Null when the voice can speak here, else one line that says why not.</summary>
    public static string? WhyNot()
    {
        foreach (string library in (string[])[FliteNative.Library, FliteNative.SltLibrary])
        {
            if (!NativeLibrary.TryLoad(library, typeof(FliteVoice).Assembly, null, out _))
            {
                return OperatingSystem.IsLinux()
                    ? $"flite is not installed ({library} was not found); install the package flite"
                    : "flite is used on Linux only";
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public VoiceSound Speak(string text)
    {
        string words = SpokenText.ForSpeech(text);
        if (words.Length == 0)
        {
            return VoiceSound.Silent;
        }

        lock (Gate)
        {
            FliteNative.srand(1); // the same text is the same sound
            using FliteWaveHandle wave = FliteNative.flite_text_to_wave(words, slt);
            return wave.IsInvalid ? throw new VoiceException("flite made no sound of the text") : Copy(wave);
        }
    }

    private static nint Register()
    {
        if (FliteNative.flite_init() < 0)
        {
            throw new VoiceException("flite did not start");
        }

        nint voice = FliteNative.register_cmu_us_slt(0);
        return voice != 0 ? voice : throw new VoiceException("flite's voice slt did not load");
    }

    private static unsafe VoiceSound Copy(FliteWaveHandle handle)
    {
        ref readonly FliteWave wave = ref *(FliteWave*)handle.DangerousGetHandle();
        if (wave.SampleRate != VoiceSound.SampleRate || wave.Channels != 1)
        {
            throw new VoiceException($"flite spoke with {wave.SampleRate} Hz and {wave.Channels} channels; 16000 Hz mono was expected");
        }

        var source = new ReadOnlySpan<short>((void*)wave.Samples, wave.SampleCount);
        var samples = new float[source.Length];
        for (int i = 0; i < samples.Length; i++)
        {
            samples[i] = source[i] / 32768f;
        }

        return new(samples);
    }
}
