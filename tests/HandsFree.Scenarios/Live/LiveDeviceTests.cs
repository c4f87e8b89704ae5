using System.Collections.Concurrent;
using HandsFree.App.Live;
using HandsFree.App.Session;
using HandsFree.Audio.Devices;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Live;

/// <summary>Microphone and loudspeaker of a round, on devices that go and come.</summary>
public sealed class LiveDeviceTests
{
    private static readonly TimeSpan Retry = TimeSpan.FromMilliseconds(1);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void Two_hundred_losses_are_told_each_with_its_return_and_no_frame_is_unaccounted()
    {
        PretendedSound sound = new();
        using BlockingCollection<string?> told = [];
        LiveMicrophone microphone = LiveMicrophone.Open(sound, null, TimeProvider.System, Retry).Microphone!;
        microphone.Start(told.Add);
        long taken = 0;
        using (CancellationTokenSource stop = new())
        {
            Thread reader = new(() => taken = ReadAll(microphone, stop.Token));
            reader.Start();
            for (int i = 0; i < 200; i++)
            {
                sound.Plugged = false;
                Next(told).ShouldBe("gone");
                sound.Plugged = true;
                Next(told).ShouldBeNull();
            }

            microphone.Dispose();
            stop.CancelAfter(TimeSpan.FromMilliseconds(300));
            reader.Join(Patience).ShouldBeTrue();
        }

        microphone.Losses.ShouldBe(200);
        (taken + microphone.Dropped).ShouldBe(microphone.Frames);
        sound.Opened.Skip(1).ShouldAllBe(name => name == "headset"); // the same one, never the usual one
    }

    [Fact]
    public void A_driver_that_neither_brings_sound_nor_comes_back_is_told_and_so_is_its_return()
    {
        FakeTimeProvider time = new();
        PretendedSound sound = new();
        using BlockingCollection<string?> told = [];
        using LiveMicrophone microphone = LiveMicrophone.Open(sound, null, time, Retry).Microphone!;
        sound.Comes.Reset();
        microphone.Start(told.Add);

        time.Advance(TimeSpan.FromSeconds(1)); // the watch sees the last frame
        told.ShouldBeEmpty();
        time.Advance(TimeSpan.FromSeconds(3));
        told.ShouldBeEmpty();
        time.Advance(TimeSpan.FromSeconds(1));
        Next(told).ShouldBe("no sound comes from \"headset\" any more; plug it in again, or see that it is not muted and that the system's sound runs");
        time.Advance(TimeSpan.FromSeconds(60));
        told.ShouldBeEmpty(); // once

        long before = microphone.Frames;
        sound.Comes.Set();
        SpinWait.SpinUntil(() => microphone.Frames > before, Patience).ShouldBeTrue();
        time.Advance(TimeSpan.FromSeconds(1));
        Next(told).ShouldBeNull();
    }

    [Fact]
    public void A_loudspeaker_plays_in_order_and_tells_begin_and_end()
    {
        PretendedSound sound = new();
        using Watch watch = new();
        using LiveLoudspeaker loudspeaker = Started(sound, watch);
        loudspeaker.Play(Enumerable.Repeat(0.25f, 500).ToArray());

        watch.WaitForEnd();
        lock (sound.Played)
        {
            sound.Played.Count.ShouldBe(2 * SoundFrame.Samples);
            sound.Played.Take(500).ShouldAllBe(s => s == 0.25f);
            sound.Played.Skip(500).ShouldAllBe(s => s == 0);
        }

        loudspeaker.Latency.ShouldBe(TimeSpan.FromMilliseconds(100)); // what "check" measured is more than what the device says
        watch.Begins.ShouldBe(1);
        loudspeaker.IsPlaying.ShouldBeFalse();
    }

    [Fact]
    public void A_loudspeaker_that_goes_ends_what_it_played_and_says_why_it_is_silent()
    {
        PretendedSound sound = new();
        using Watch watch = new();
        using BlockingCollection<string?> told = [];
        using LiveLoudspeaker loudspeaker = Started(sound, watch, told.Add);
        sound.Plugged = false;
        loudspeaker.Play(new float[100_000]);

        Next(told).ShouldBe("gone");
        loudspeaker.IsPlaying.ShouldBeFalse();
        loudspeaker.WhySilent.ShouldBe("gone");
        loudspeaker.Play(new float[10]);
        loudspeaker.IsPlaying.ShouldBeFalse();
        sound.Plugged = true;
        Next(told).ShouldBeNull();
        loudspeaker.WhySilent.ShouldBeNull();
    }

    [Fact]
    public void A_microphone_that_is_kept_and_not_there_is_waited_for()
    {
        PretendedSound sound = new() { Plugged = false };
        using BlockingCollection<string?> told = [];
        using LiveMicrophone microphone = LiveMicrophone.Awaited(sound, "headset", TimeProvider.System, Retry);
        microphone.Start(told.Add);

        Next(told).ShouldBe("the microphone \"headset\" is not there; plug it in");
        sound.Plugged = true;
        Next(told).ShouldBeNull();
        microphone.Read(TestContext.Current.CancellationToken).ShouldNotBeNull();
    }

    [Fact]
    public void Without_any_sound_there_are_still_the_keys()
    {
        using LiveSound sound = LiveSound.Open(null, "no sound here", new SoundSettings(), withMicrophone: true, TimeProvider.System);

        sound.HasMicrophone.ShouldBeFalse();
        sound.Remarks.ShouldBe(
        [
            "No microphone: no sound here. Type what you would say (\"room 12 bed b\", \"yes\", \"pulse 72\").",
            "Nothing can be said aloud, it is shown: no sound here.",
        ]);
    }

    private static LiveLoudspeaker Started(PretendedSound sound, IPlaybackWatch watch, Action<string?>? told = null)
    {
        LiveLoudspeaker loudspeaker = LiveLoudspeaker.Open(sound, null, TimeProvider.System, TimeSpan.FromMilliseconds(100), Retry).Loudspeaker!;
        loudspeaker.Connect(watch);
        loudspeaker.Start(told ?? (_ => { }));
        return loudspeaker;
    }

    private static string? Next(BlockingCollection<string?> told) =>
        told.TryTake(out string? text, Patience) ? text : throw new TimeoutException("nothing was told");

    private static long ReadAll(LiveMicrophone microphone, CancellationToken stop)
    {
        long frames = 0;
        try
        {
            while (microphone.Read(stop) is not null)
            {
                frames++;
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return frames;
        }

        return frames;
    }

    private sealed class Watch : IPlaybackWatch, IDisposable
    {
        private readonly ManualResetEventSlim ended = new();

        public int Begins { get; private set; }

        public void Started(DateTimeOffset at) => Begins++;

        public void Ended(DateTimeOffset at) => ended.Set();

        public void WaitForEnd() => ended.Wait(Patience).ShouldBeTrue();

        public void Dispose() => ended.Dispose();
    }
}
