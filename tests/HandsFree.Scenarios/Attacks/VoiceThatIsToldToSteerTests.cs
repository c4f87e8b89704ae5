using HandsFree.App.Session;
using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a name in the record that a voice would take for something else than words, or that makes it fail, so that a
/// round ends in the middle.</summary>
public sealed class VoiceThatIsToldToSteerTests
{
    [Fact]
    public void A_voice_gets_words_only()
    {
        List<string> spoken = [];

        Say(new Speaking(spoken.Add), "Dr \u001b[2J\u202eno\u0007body. Look first.").ShouldBeNull();

        spoken.ShouldNotBeEmpty();
        spoken.ShouldAllBe(text => !Steering.Steers(text) && !text.Contains('\ufffd', StringComparison.Ordinal));
        string.Join(' ', spoken).ShouldContain("Look first");
    }

    [Theory]
    [InlineData(typeof(NullReferenceException))]
    [InlineData(typeof(InvalidCastException))]
    [InlineData(typeof(OutOfMemoryException))]
    public void A_voice_that_fails_as_it_likes_is_a_text_that_is_shown_and_no_end_of_the_round(Type failure)
    {
        SteadyVoice voice = new(new Speaking(_ => throw (Exception)Activator.CreateInstance(failure)!), TimeSpan.FromSeconds(20));

        Say(voice, "Pulse, seven two.").ShouldNotBeNull().ShouldContain(failure.Name);
    }

    private static string? Say(IVoice voice, string text) =>
        new Mouth(voice, new Silent(), new EchoGate(() => TimeSpan.Zero, TimeSpan.Zero), new EventQueue()).Say(text);

    private sealed class Speaking(Action<string> said) : IVoice
    {
        public string Name => "speaking";

        public VoiceSound Speak(string text)
        {
            said(text);
            return VoiceSound.Silent;
        }
    }

    private sealed class Silent : ILoudspeaker
    {
        public string? WhySilent => null;

        public TimeSpan Latency => TimeSpan.Zero;

        public bool IsPlaying => false;

        public void Connect(IPlaybackWatch watch)
        {
            // Nothing is played, so nobody is told.
        }

        public void Play(IReadOnlyList<float> samples)
        {
            // Nothing is played.
        }

        public void Silence()
        {
            // Nothing is played.
        }

        public void Dispose()
        {
            // Holds nothing.
        }
    }
}
