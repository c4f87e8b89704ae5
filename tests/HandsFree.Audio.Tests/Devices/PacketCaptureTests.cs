using HandsFree.Audio.Devices;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

public sealed class PacketCaptureTests
{
    private readonly FakeTimeProvider time = new();
    private readonly float[] frame = new float[SoundFrame.Samples];

    [Fact]
    public void A_device_that_signals_and_brings_nothing_is_told_after_three_seconds_at_first()
    {
        Source source = new(time, []);

        Read(source).ShouldBe(Patience.Over("headset"));
        source.Waited.ShouldBe(Patience.Starting);
    }

    [Fact]
    public void A_device_that_ran_and_then_only_signals_is_told_after_half_a_second()
    {
        Source source = new(time, [SoundFrame.Samples]);
        PacketCapture capture = new(source, "headset", time);

        capture.Read(frame, out _).ShouldBeNull();
        capture.Read(frame, out _).ShouldBe(Patience.Over("headset"));
        source.Waited.ShouldBe(Patience.Running);
    }

    [Fact]
    public void A_few_samples_now_and_then_are_no_sound_either()
    {
        Source source = new(time, [.. Enumerable.Repeat(1, 100_000)]) { Pause = TimeSpan.FromMilliseconds(100) };

        Read(source).ShouldBe(Patience.Over("headset"));
    }

    [Fact]
    public void Packets_of_any_size_make_frames_of_their_samples_in_order()
    {
        int[] sizes = [1, 441, 160, 320, 7, 999];
        PacketCapture capture = new(new Source(time, sizes), "headset", time);
        List<float> heard = [];
        while (heard.Count + SoundFrame.Samples <= sizes.Sum())
        {
            capture.Read(frame, out _).ShouldBeNull();
            heard.AddRange(frame);
        }

        heard.ShouldBe(Enumerable.Range(0, heard.Count).Select(i => (float)i));
    }

    private SoundFault? Read(Source source) => new PacketCapture(source, "headset", time).Read(frame, out _);

    /// <summary>Signals at once each time, with or without a packet; its samples count up.</summary>
    private sealed class Source(FakeTimeProvider time, int[] packets) : IPacketSource
    {
        private readonly Queue<int> left = new(packets);
        private int signals;
        private int sample;
        private bool signalled = true;

        public TimeSpan Pause { get; init; } = TimeSpan.FromMilliseconds(10);

        public TimeSpan Waited { get; private set; }

        public void Wait(TimeSpan atMost)
        {
            atMost.ShouldBeGreaterThan(TimeSpan.Zero);
            (++signals).ShouldBeLessThan(10_000, "it waits for ever");
            TimeSpan now = Pause < atMost ? Pause : atMost;
            time.Advance(now);
            Waited += now;
            signalled = true;
        }

        public int Take(Span<float> samples)
        {
            if (!signalled || !left.TryDequeue(out int size))
            {
                return 0;
            }

            signalled = false;
            for (int i = 0; i < size; i++)
            {
                samples[i] = sample++;
            }

            return size;
        }
    }
}
