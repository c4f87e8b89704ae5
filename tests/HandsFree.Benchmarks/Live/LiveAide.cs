using HandsFree.App.Demo.Script;
using HandsFree.Audio;
using HandsFree.Audio.Devices;

namespace HandsFree.Benchmarks.Live;

/// <summary>The demo's aide with a real mouth: she listens to what a round in another process says, and plays her clips into the
/// microphone's sink, frame by frame, with quiet between them. Time is the device's.</summary>
internal sealed class LiveAide(Aide aide, ClipShelf clips, RoundProcess round, IPlaybackStream mouth, TimeProvider time, Action<string> write)
{
    private static readonly TimeSpan Reaction = TimeSpan.FromMilliseconds(600);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private readonly float[] frame = new float[SoundFrame.Samples];
    private readonly List<SpokenClip> said = [];
    private TimeSpan spoken = Reaction;

    /// <summary>What she said.</summary>
    public IReadOnlyList<SpokenClip> Said => said;

    /// <summary>Speaks until the round is over or she leaves.</summary>
    /// <param name="atMost">She leaves then in any case.</param>
    /// <returns>Whether the round is over.</returns>
    public bool Run(TimeSpan atMost)
    {
        for (TimeSpan passed = TimeSpan.Zero; passed < atMost; passed += SoundFrame.Duration)
        {
            if (!round.Runs)
            {
                return true;
            }

            frame.AsSpan().Clear();
            Write();
            spoken += SoundFrame.Duration;
            if (round.Quiet is not { } silent || Shorter(silent, spoken) is var quiet && (quiet < Reaction || (quiet < Patience && !round.Ears.Answered)))
            {
                continue;
            }

            (string prompt, var listening) = round.Ears.Now();
            switch (aide.Next(prompt, listening))
            {
                case AideMove.Speak speak:
                    write($"aide: {speak.Clip.Text}");
                    round.Ears.Forget();
                    said.Add(new SpokenClip(speak.Clip, time.GetLocalNow(), listening));
                    passed += Play(clips.Samples(speak.Clip));
                    break;
                case AideMove.Leave:
                    return false;
            }
        }

        return false;
    }

    private static TimeSpan Shorter(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private TimeSpan Play(float[] samples)
    {
        for (int i = 0; i < samples.Length; i += SoundFrame.Samples)
        {
            int length = Math.Min(SoundFrame.Samples, samples.Length - i);
            frame.AsSpan().Clear();
            samples.AsSpan(i, length).CopyTo(frame);
            Write();
        }

        spoken = TimeSpan.Zero;
        return SampleTime.Of(samples.Length);
    }

    private void Write()
    {
        if (mouth.Write(frame) is { } fault)
        {
            throw new InvalidOperationException(fault.Text);
        }
    }
}
