using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class SteadyVoiceTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(20);

    [Theory]
    [InlineData(typeof(InvalidOperationException))]
    [InlineData(typeof(System.Runtime.InteropServices.COMException))]
    [InlineData(typeof(DllNotFoundException))]
    [InlineData(typeof(NullReferenceException))]
    [InlineData(typeof(UnauthorizedAccessException))]
    public void Whatever_a_voice_throws_is_a_failure_of_the_voice_with_its_reason(Type failure)
    {
        SteadyVoice voice = new(new Failing(() => throw (Exception)Activator.CreateInstance(failure, "no such key\n")!), Long);

        VoiceException told = Should.Throw<VoiceException>(() => voice.Speak("pulse"));

        told.Message.ShouldContain("no such key");
        told.Message.ShouldContain(failure.Name);
        told.Message.ShouldNotContain("\n");
    }

    [Fact]
    public void What_a_voice_says_itself_of_its_failure_stays_as_it_is() =>
        Should.Throw<VoiceException>(() => new SteadyVoice(new Failing(() => throw new VoiceException("flite made no sound of the text")), Long).Speak("x"))
            .Message.ShouldBe("flite made no sound of the text");

    [Fact]
    public void A_voice_that_does_not_come_back_is_left_behind_and_not_waited_for_again()
    {
        using ManualResetEventSlim released = new();
        int asked = 0;
        SteadyVoice voice = new(new Failing(() =>
        {
            asked++;
            released.Wait();
            return VoiceSound.Silent;
        }), TimeSpan.FromMilliseconds(50));

        Should.Throw<VoiceException>(() => voice.Speak("one")).Message.ShouldContain("does not answer");
        Should.Throw<VoiceException>(() => voice.Speak("two")).Message.ShouldContain("does not answer");
        released.Set();
        asked.ShouldBe(1);
    }

    [Fact]
    public void A_voice_that_can_t_be_made_is_a_reason_and_no_error()
    {
        Voices.Made(() => null, () => throw new NotSupportedException("no speech here")).WhyNone.ShouldBe("the voice can't be started (NotSupportedException: no speech here)");
        Voices.Made(() => throw new TypeInitializationException("Sapi", null), () => new Failing(() => VoiceSound.Silent)).WhyNone!.ShouldContain("TypeInitializationException");
        Voices.Made(() => "none is installed", () => new Failing(() => VoiceSound.Silent)).WhyNone.ShouldBe("none is installed");
    }

    [Fact]
    public void A_voice_from_the_choice_is_a_steady_one() =>
        Voices.Made(() => null, () => new Failing(() => VoiceSound.Silent)).Voice.ShouldBeOfType<SteadyVoice>();

    private sealed class Failing(Func<VoiceSound> speak) : IVoice
    {
        public string Name => "failing";

        public VoiceSound Speak(string text) => speak();
    }
}
