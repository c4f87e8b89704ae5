using HandsFree.Audio.Devices;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

public sealed class FrameQueueTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 3, 12, 0, 0, TimeSpan.Zero);
    private readonly float[] frame = new float[SoundFrame.Samples];

    [Fact]
    public void Frames_come_out_in_order_with_their_times()
    {
        FrameQueue queue = Filled(5, 3);

        Taken(queue, 3).ShouldBe([0, 1, 2]);
        queue.Take(frame, out _, TimeSpan.Zero).ShouldBeFalse();
        queue.Dropped.ShouldBe(0);
    }

    [Fact]
    public void A_full_queue_drops_the_oldest_frame_and_counts_it()
    {
        FrameQueue queue = Filled(3, 5);

        queue.Dropped.ShouldBe(2);
        Taken(queue, 3).ShouldBe([2, 3, 4]);
    }

    [Fact]
    public async Task Who_takes_waits_for_who_puts()
    {
        FrameQueue queue = new(2);
        Task<bool> taking = Task.Run(() => queue.Take(frame, out _, TimeSpan.FromSeconds(10)), TestContext.Current.CancellationToken);
        queue.Put(new float[SoundFrame.Samples], Noon);
        (await taking).ShouldBeTrue();
    }

    [Fact]
    public void A_piece_that_is_no_frame_is_refused() =>
        Should.Throw<ArgumentOutOfRangeException>(() => new FrameQueue(1).Put(new float[10], Noon));

    private static FrameQueue Filled(int capacity, int frames)
    {
        FrameQueue queue = new(capacity);
        for (int i = 0; i < frames; i++)
        {
            queue.Put(Enumerable.Repeat((float)i, SoundFrame.Samples).ToArray(), Noon + (i * SoundFrame.Duration));
        }

        return queue;
    }

    private List<int> Taken(FrameQueue queue, int frames)
    {
        List<int> found = [];
        for (int i = 0; i < frames; i++)
        {
            queue.Take(frame, out DateTimeOffset at, TimeSpan.Zero).ShouldBeTrue();
            frame.ShouldAllBe(s => s == frame[0]);
            at.ShouldBe(Noon + (frame[0] * SoundFrame.Duration));
            found.Add((int)frame[0]);
        }

        return found;
    }
}
