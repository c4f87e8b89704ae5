using HandsFree.App.Checks;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Devices.Pulse;
using HandsFree.TestKit.Sound;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Checks;

/// <summary>The chirp through a sound server: heard where the loudspeaker is beside the microphone, not heard from an earpiece.</summary>
public sealed class SoundProbeTests
{
    [Theory]
    [InlineData(PulseServer.Mouth, true)]
    [InlineData(PulseServer.Earpiece, false)]
    public void The_way_from_the_loudspeaker_to_the_microphone_is_measured(string loudspeaker, bool isHeard)
    {
        Assert.SkipWhen(PulseSound.WhyNot() is not null, PulseSound.WhyNot() ?? "");
        using PulseServer server = PulseServer.StartOrSkip();
        PulseSound sound = new(TimeProvider.System, server.Address);
        using ICaptureStream microphone = sound.OpenCapture(PulseServer.Microphone).Stream!;
        using IPlaybackStream playback = sound.OpenPlayback(loudspeaker).Stream!;
        SoundProbe probe = new(microphone, playback, TimeProvider.System);

        probe.Run();

        probe.Fault.ShouldBeNull();
        probe.NoiseDbfs.ShouldBe(-120);
        (probe.Echo is not null).ShouldBe(isHeard);
        (probe.Echo ?? TimeSpan.Zero).TotalMilliseconds.ShouldBeInRange(0, 500);
    }
}
