using HandsFree.Audio.Devices;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

public sealed class DeviceChoiceTests
{
    private static readonly SoundDevice Monitor = new("speaker.monitor", "Monitor of the loudspeaker", SoundFlow.Capture, IsMonitor: true, IsDefault: true);
    private static readonly SoundDevice Headset = new("headset", "A headset", SoundFlow.Capture, IsMonitor: false, IsDefault: false);
    private static readonly SoundDevice Camera = new("camera", "A camera", SoundFlow.Capture, IsMonitor: false, IsDefault: false);
    private static readonly SoundDevice Speaker = new("speaker", "The loudspeaker", SoundFlow.Playback, IsMonitor: false, IsDefault: true);

    [Fact]
    public void A_default_that_is_a_monitor_is_passed_over() =>
        DeviceChoice.Of([Monitor, Headset, Camera, Speaker], SoundFlow.Capture, null).Device.ShouldBe(Headset);

    [Fact]
    public void A_name_is_taken_as_it_is() =>
        DeviceChoice.Of([Monitor, Headset], SoundFlow.Capture, "speaker.monitor").Device.ShouldBe(Monitor);

    [Fact]
    public void A_name_that_is_not_there_is_refused_with_those_that_are()
    {
        SoundFault fault = DeviceChoice.Of([Monitor, Headset, Camera], SoundFlow.Capture, "lapel").Fault!;
        fault.Problem.ShouldBe(SoundProblem.NoDevice);
        fault.Text.ShouldBe("the microphone \"lapel\" is not there; plug it in, or choose another: headset, camera");
    }

    [Fact]
    public void Where_only_monitors_are_there_is_no_microphone() =>
        DeviceChoice.Of([Monitor, Speaker], SoundFlow.Capture, null).Fault!.Text.ShouldBe("there is no microphone; plug one in");

    [Fact]
    public void A_device_may_be_named_as_people_see_it_where_only_one_is_called_so()
    {
        SoundDevice twin = Camera with { Name = "camera-2" };

        DeviceChoice.Of([Headset, Camera], SoundFlow.Capture, "a HEADSET").Device.ShouldBe(Headset);
        DeviceChoice.Of([Headset, Camera, twin], SoundFlow.Capture, "A camera").Device.ShouldBeNull();
    }

    [Fact]
    public void Two_devices_of_one_name_are_told_apart_alike_at_every_start()
    {
        (string, string)[] now = [("{b}", "Microphone (USB)"), ("{a}", "Microphone (USB)"), ("{c}", "Speakers")];

        DeviceNames.Different(now).ShouldBe([("{b}", "Microphone (USB) (2)"), ("{a}", "Microphone (USB)"), ("{c}", "Speakers")]);
        DeviceNames.Different([.. now.Reverse()]).ShouldBe([("{c}", "Speakers"), ("{a}", "Microphone (USB)"), ("{b}", "Microphone (USB) (2)")]);
    }
}
