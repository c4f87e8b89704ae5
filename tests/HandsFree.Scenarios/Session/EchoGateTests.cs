using HandsFree.App.Session;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>When the program's own voice could be in a frame.</summary>
public sealed class EchoGateTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 3, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(-20, 0, false)]
    [InlineData(-20, 1, true)]
    [InlineData(500, 520, true)]
    [InlineData(1_280, 1_300, true)]
    [InlineData(1_290, 1_310, false)]
    public void Frames_are_dropped_from_the_start_of_a_playback_to_its_end_and_latency_and_tail(int from, int to, bool dropped)
    {
        EchoGate gate = new(() => TimeSpan.FromMilliseconds(40), TimeSpan.FromMilliseconds(250));
        gate.Start(Noon);
        gate.End(At(1_000));
        gate.Covers(At(from), At(to)).ShouldBe(dropped);
    }

    [Fact]
    public void A_late_frame_of_an_earlier_playback_is_dropped_too()
    {
        EchoGate gate = new(() => TimeSpan.Zero, TimeSpan.FromMilliseconds(250));
        gate.Start(Noon);
        gate.End(At(1_000));
        gate.Start(At(5_000));
        gate.Covers(At(900), At(920)).ShouldBeTrue();
        gate.Covers(At(2_000), At(2_020)).ShouldBeFalse();
        gate.Covers(At(5_000), At(5_020)).ShouldBeTrue();
    }

    [Fact]
    public void The_latency_is_the_one_at_the_end_of_the_playback()
    {
        TimeSpan latency = TimeSpan.Zero;
        EchoGate gate = new(() => latency, TimeSpan.FromMilliseconds(250));
        gate.Start(Noon);
        latency = TimeSpan.FromMilliseconds(180);
        gate.End(At(1_000));
        gate.Covers(At(1_400), At(1_420)).ShouldBeTrue();
        gate.Covers(At(1_430), At(1_450)).ShouldBeFalse();
    }

    private static DateTimeOffset At(int milliseconds) => Noon + TimeSpan.FromMilliseconds(milliseconds);
}
