using HandsFree.Audio.Devices;
using HandsFree.Audio.Devices.Alsa;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

/// <summary>ALSA's own device "null", on any machine: it takes everything and is always ready to be read. What a real card does is not tried.</summary>
public sealed class AlsaTests
{
    private readonly AlsaSound sound;
    private readonly float[] frame = new float[SoundFrame.Samples];

    public AlsaTests()
    {
        Assert.SkipWhen(AlsaSound.WhyNot() is not null, AlsaSound.WhyNot() ?? "");
        sound = new AlsaSound(TimeProvider.System);
    }

    [Fact]
    public void Frames_are_read_and_written()
    {
        using ICaptureStream capture = sound.OpenCapture("null").Stream!;
        using IPlaybackStream playback = sound.OpenPlayback("null").Stream!;
        for (int i = 0; i < 10; i++)
        {
            playback.Write(frame).ShouldBeNull();
            capture.Read(frame, out _).ShouldBeNull();
        }

        playback.Flush();
        playback.Look().ShouldBeNull();
    }

    [Fact]
    public void A_device_that_is_not_there_is_named()
    {
        SoundFault fault = sound.OpenCapture("plughw:CARD=nowhere").Fault!;

        fault.Problem.ShouldBe(SoundProblem.NoDevice);
        fault.Text.ShouldContain("plughw:CARD=nowhere");
    }

    [Fact]
    public void Devices_are_listed_without_a_fault() => sound.List().Fault.ShouldBeNull();
}
