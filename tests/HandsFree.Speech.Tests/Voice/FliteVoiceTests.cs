using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class FliteVoiceTests
{
    public FliteVoiceTests() => Assert.SkipWhen(FliteVoice.WhyNot() is not null, FliteVoice.WhyNot() ?? "");

    [Fact]
    public void A_read_back_is_a_second_or_two_of_sound_at_16_kHz_that_is_not_silent()
    {
        VoiceSound sound = new FliteVoice().Speak("pulse, seven two. Is that right?");
        sound.Duration.TotalSeconds.ShouldBeInRange(1, 4);
        sound.Samples.Max(Math.Abs).ShouldBeInRange(0.05f, 1);
    }

    [Fact]
    public void The_same_text_is_the_same_sound()
    {
        var voice = new FliteVoice();
        ShouldSoundLike(voice.Speak("respirations one eight").Samples, voice.Speak("respirations one eight").Samples);
    }

    [Fact]
    public void Another_text_is_another_sound() =>
        new FliteVoice().Speak("eighteen").Samples.ShouldNotBe(new FliteVoice().Speak("eighty").Samples);

    [Theory]
    [InlineData("")]
    [InlineData("  \n ")]
    public void An_empty_text_is_no_sound(string text) => new FliteVoice().Speak(text).Samples.ShouldBeEmpty();

    [Fact]
    public void Two_threads_may_speak_at_once()
    {
        var voice = new FliteVoice();
        IReadOnlyList<float> alone = voice.Speak("oxygen nine seven").Samples;
        VoiceSound[] together = [.. Enumerable.Range(0, 4).AsParallel().WithDegreeOfParallelism(4).Select(_ => new FliteVoice().Speak("oxygen nine seven"))];
        foreach (VoiceSound sound in together)
        {
            ShouldSoundLike(sound.Samples, alone);
        }
    }

    /// <summary>flite draws the noise of its consonants from the C library's one random state, which other native code of the process
    /// (libvosk) may draw from too: the samples differ by that noise, length and loudness don't.</summary>
    private static void ShouldSoundLike(IReadOnlyList<float> sound, IReadOnlyList<float> other)
    {
        sound.Count.ShouldBe(other.Count);
        (Loudness(sound) / Loudness(other)).ShouldBe(1, 0.05);
    }

    private static double Loudness(IReadOnlyList<float> samples) => Math.Sqrt(samples.Average(s => (double)s * s));
}
