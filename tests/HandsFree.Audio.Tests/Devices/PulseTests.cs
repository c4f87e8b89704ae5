using HandsFree.Audio.Devices;
using HandsFree.Audio.Devices.Pulse;
using HandsFree.Audio.Tones;
using HandsFree.TestKit.Sound;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Devices;

/// <summary>Against a real PulseAudio server of the test's own.</summary>
public sealed class PulseTests : IDisposable
{
    private readonly PulseServer server;
    private readonly PulseSound sound;
    private readonly float[] frame = new float[SoundFrame.Samples];

    public PulseTests()
    {
        Assert.SkipWhen(PulseSound.WhyNot() is not null, PulseSound.WhyNot() ?? "");
        server = PulseServer.StartOrSkip();
        sound = new PulseSound(TimeProvider.System, server.Address);
    }

    public void Dispose() => server.Dispose();

    [Fact]
    public void Devices_are_listed_and_a_monitor_is_known_as_one()
    {
        (IReadOnlyList<SoundDevice> devices, SoundFault? fault) = sound.List();

        fault.ShouldBeNull();
        devices.Where(d => d.Flow == SoundFlow.Playback).Select(d => d.Name).ShouldBe([PulseServer.Mouth, PulseServer.Earpiece], ignoreOrder: true);
        devices.Single(d => d.Name == PulseServer.Microphone).IsMonitor.ShouldBeTrue();
    }

    [Fact]
    public void Without_a_name_a_loudspeakers_monitor_is_never_taken_for_a_microphone()
    {
        (ICaptureStream? stream, SoundFault? fault) = sound.OpenCapture(null);

        stream.ShouldBeNull();
        fault!.Problem.ShouldBe(SoundProblem.NoDevice);
        fault.Text.ShouldBe("there is no microphone; plug one in");
    }

    [Fact]
    public async Task What_is_played_is_captured_and_the_times_of_the_frames_go_with_the_samples()
    {
        using IPlaybackStream playback = Opened(sound.OpenPlayback(PulseServer.Mouth));
        Task playing = Task.Run(
            () => Play(playback, [.. new float[AudioClip.SampleRate], .. ToneMaker.Make(1_000, TimeSpan.FromSeconds(1), -6), .. new float[AudioClip.SampleRate]]),
            TestContext.Current.CancellationToken);
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        double energy = 0;
        List<DateTimeOffset> times = [];
        while (energy == 0 || frame.Any(s => s != 0))
        {
            capture.Read(frame, out DateTimeOffset at).ShouldBeNull();
            times.Add(at);
            energy += frame.Sum(s => (double)s * s);
        }

        await playing;
        DateTimeOffset[] steady = [.. times.TakeLast(75)];
        // A sine of -6 dBFS has a mean square of 0.126; one second of it.
        (energy / AudioClip.SampleRate).ShouldBeInRange(0.08, 0.13);
        steady.Zip(steady.Skip(1), (a, b) => (b - a).TotalMilliseconds).ShouldAllBe(step => step > 15 && step < 25);
        (steady[^1] - steady[0]).TotalMilliseconds.ShouldBeInRange(1_450, 1_510);
    }

    [Fact]
    public void A_device_that_is_unplugged_ends_the_stream_and_it_moves_nowhere()
    {
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        capture.Read(frame, out _).ShouldBeNull();

        server.Unload(PulseServer.Mouth);

        FaultOf(capture).Problem.ShouldBe(SoundProblem.Lost);
    }

    [Fact]
    public void A_stream_that_somebody_moves_is_not_listened_to()
    {
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        capture.Read(frame, out _).ShouldBeNull();

        // The server refuses to move a pinned stream; what is tested is that no frame of the other device comes.
        try
        {
            server.MoveRecordings("earpiece.monitor");
        }
        catch (InvalidOperationException refused)
        {
            refused.Message.ShouldContain("move-source-output");
        }

        for (int i = 0; i < 10; i++)
        {
            SoundFault? fault = capture.Read(frame, out _);
            if (fault is not null)
            {
                fault.Problem.ShouldBe(SoundProblem.Moved);
                return;
            }
        }

        capture.Device.ShouldBe(PulseServer.Microphone);
    }

    [Fact]
    public void A_server_that_stands_still_is_noticed_after_half_a_second()
    {
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        capture.Read(frame, out _).ShouldBeNull();

        server.Freeze();
        try
        {
            FaultOf(capture).Problem.ShouldBe(SoundProblem.Stalled);
        }
        finally
        {
            server.GoOn();
        }
    }

    [Fact]
    public void A_server_that_ends_ends_the_streams()
    {
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        using IPlaybackStream playback = Opened(sound.OpenPlayback(PulseServer.Earpiece));
        capture.Read(frame, out _).ShouldBeNull();

        server.Kill();

        FaultOf(capture).Problem.ShouldBe(SoundProblem.Lost);
        FaultOf(playback).Problem.ShouldBe(SoundProblem.Lost);
        sound.List().Fault!.Problem.ShouldBe(SoundProblem.NoSystem);
    }

    [Fact]
    public void Reading_and_writing_need_no_memory_once_they_run()
    {
        using ICaptureStream capture = Opened(sound.OpenCapture(PulseServer.Microphone));
        using IPlaybackStream playback = Opened(sound.OpenPlayback(PulseServer.Earpiece));
        FrameQueue queue = new(4);
        Turn(capture, playback, queue, 25);

        long before = GC.GetAllocatedBytesForCurrentThread();
        Turn(capture, playback, queue, 25);

        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);
    }

    private void Turn(ICaptureStream capture, IPlaybackStream playback, FrameQueue queue, int frames)
    {
        for (int i = 0; i < frames; i++)
        {
            if (capture.Read(frame, out DateTimeOffset at) is not null || playback.Write(frame) is not null)
            {
                throw new InvalidOperationException("a stream ended");
            }

            queue.Put(frame, at);
            queue.Take(frame, out _, TimeSpan.Zero);
        }
    }

    private static void Play(IPlaybackStream playback, float[] samples)
    {
        for (int i = 0; i + SoundFrame.Samples <= samples.Length; i += SoundFrame.Samples)
        {
            playback.Write(samples.AsSpan(i, SoundFrame.Samples));
        }
    }

    private SoundFault FaultOf(ICaptureStream capture)
    {
        for (int i = 0; i < 100; i++)
        {
            if (capture.Read(frame, out _) is { } fault)
            {
                return fault;
            }
        }

        throw new InvalidOperationException("the stream goes on");
    }

    private static SoundFault FaultOf(IPlaybackStream playback)
    {
        for (int i = 0; i < 100; i++)
        {
            if (playback.Look() is { } fault)
            {
                return fault;
            }
        }

        throw new InvalidOperationException("the stream goes on");
    }

    private static T Opened<T>((T? Stream, SoundFault? Fault) opening)
        where T : class => opening.Stream ?? throw new InvalidOperationException(opening.Fault!.Text);
}
