using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class VoicesTests
{
    [Fact]
    public void There_is_a_voice_or_one_line_that_says_why_not()
    {
        var (voice, why) = Voices.Best();
        (voice is null).ShouldBe(why is not null);
        why?.ShouldNotContain("\n");
    }

    [Fact]
    public void Flite_comes_before_espeak()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || FliteVoice.WhyNot() is not null, "flite is not installed");
        Voices.Best().Voice!.Name.ShouldBe("flite");
    }

    [Fact]
    public void An_unknown_name_is_refused_and_the_known_ones_are_named()
    {
        var (voice, why) = Voices.Named("parrot");
        voice.ShouldBeNull();
        why.ShouldBe("there is no voice \"parrot\"; use flite, espeak-ng or windows");
    }

    [Fact]
    public void The_Windows_voice_is_refused_elsewhere()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this is Windows");
        Voices.Named("windows").WhyNone.ShouldBe("the voice windows is on Windows only; use flite or espeak-ng");
    }
}
