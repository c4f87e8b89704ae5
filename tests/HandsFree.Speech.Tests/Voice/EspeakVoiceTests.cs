using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class EspeakVoiceTests
{
    public EspeakVoiceTests() => Assert.SkipWhen(EspeakVoice.WhyNot() is not null, EspeakVoice.WhyNot() ?? "");

    [Fact]
    public void A_read_back_is_a_second_or_two_of_sound_at_16_kHz_that_is_not_silent()
    {
        VoiceSound sound = new EspeakVoice().Speak("pulse, seven two. Is that right?");
        sound.Duration.TotalSeconds.ShouldBeInRange(1, 5);
        sound.Samples.Max(Math.Abs).ShouldBeInRange(0.05f, 1);
    }

    [Fact]
    public void An_empty_text_is_no_sound() => new EspeakVoice().Speak("").Samples.ShouldBeEmpty();

    [Fact]
    public void A_language_that_the_program_lacks_is_a_clear_error() =>
        Should.Throw<VoiceException>(() => new EspeakVoice("xx-none").Speak("one")).Message.ShouldStartWith("espeak-ng");

    [Fact]
    public void A_text_that_looks_like_an_option_is_spoken() => new EspeakVoice().Speak("--help").Samples.ShouldNotBeEmpty();
}
