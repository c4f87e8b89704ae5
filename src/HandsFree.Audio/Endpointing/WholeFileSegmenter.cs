using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>Finds the speech of a recording that holds one utterance: from the first to the last of it, pauses included.</summary>
public static class WholeFileSegmenter
{
    private const float OnThreshold = 0.5f;
    private const float OffThreshold = 0.35f;
    private static readonly int Padding = SampleTime.Samples(TimeSpan.FromSeconds(0.4));
    private static readonly int ShortestSegment = SampleTime.Samples(TimeSpan.FromSeconds(1));
    private static readonly int MinimumSpeech = SampleTime.Samples(TimeSpan.FromMilliseconds(64));

    /// <summary>One segment with 0.4 s before and after the speech (the recording's own where it has it, else zeros), at least 1 s in all;
    /// null where there is no speech.</summary>
    /// <param name="detector">Gets used to the recording's noise first, then judges it.</param>
    /// <param name="samples">16 kHz mono in [-1, 1].</param>
    public static SpeechSegment? Segment(ISpeechDetector detector, ReadOnlySpan<float> samples)
    {
        ArgumentNullException.ThrowIfNull(detector);
        List<Run> runs = Near(samples, Runs(Probabilities(detector, samples), samples.Length));
        if (runs.Count == 0)
        {
            return null;
        }

        int start = runs[0].Start;
        int end = runs[^1].End;
        ReadOnlySpan<float> speech = samples[start..end];
        Level level = LevelMeter.Measure(speech) with { RmsDbfs = SpeechLevel.ActiveDbfs(speech) };
        int length = Math.Max(end - start + (2 * Padding), ShortestSegment);
        int position = start - ((length - (end - start)) / 2);
        float[] padded = new float[length];
        int first = Math.Max(0, position);
        int last = Math.Min(samples.Length, position + length);
        samples[first..last].CopyTo(padded.AsSpan(first - position));
        int speechSamples = runs.Sum(run => run.Length);
        return new SpeechSegment(padded, position, start, end, SampleTime.Of(speechSamples), level, SegmentEnd.StreamEnded);
    }

    private static float[] Probabilities(ISpeechDetector detector, ReadOnlySpan<float> samples)
    {
        float[] probabilities = new float[(samples.Length + ISpeechDetector.FrameSamples - 1) / ISpeechDetector.FrameSamples];
        float[] frame = new float[ISpeechDetector.FrameSamples];
        detector.Accustom(samples);
        for (int i = 0; i < probabilities.Length; i++)
        {
            ReadOnlySpan<float> rest = samples[(i * frame.Length)..];
            Array.Clear(frame);
            rest[..Math.Min(rest.Length, frame.Length)].CopyTo(frame);
            probabilities[i] = detector.Probability(frame);
        }

        return probabilities;
    }

    private static List<Run> Runs(float[] probabilities, int length)
    {
        List<Run> runs = [];
        for (int i = 0; i < probabilities.Length; i++)
        {
            if (probabilities[i] < OnThreshold)
            {
                continue;
            }

            int first = i;
            while (first > 0 && probabilities[first - 1] >= OffThreshold)
            {
                first--;
            }

            while (i + 1 < probabilities.Length && probabilities[i + 1] >= OffThreshold)
            {
                i++;
            }

            Run run = new(first * ISpeechDetector.FrameSamples, Math.Min(length, (i + 1) * ISpeechDetector.FrameSamples));
            if (run.Length >= MinimumSpeech)
            {
                runs.Add(run);
            }
        }

        return runs;
    }

    // From the first to the last frame that is as loud as the speaker, and two more: talk of others before and after is left out.
    private static List<Run> Near(ReadOnlySpan<float> samples, List<Run> runs)
    {
        double range = new EndpointerOptions().LoudnessRange;
        FrameLevel meter = new();
        double[] levels = new double[(samples.Length + ISpeechDetector.FrameSamples - 1) / ISpeechDetector.FrameSamples];
        for (int i = 0; i < levels.Length; i++)
        {
            int start = i * ISpeechDetector.FrameSamples;
            levels[i] = meter.Next(samples[start..Math.Min(samples.Length, start + ISpeechDetector.FrameSamples)]);
        }

        int[] frames = [.. runs.SelectMany(r => Enumerable.Range(r.Start / ISpeechDetector.FrameSamples, (r.Length + ISpeechDetector.FrameSamples - 1) / ISpeechDetector.FrameSamples))];
        double loudest = frames.Select(f => levels[f]).DefaultIfEmpty(LevelMeter.Floor).Max();
        int[] near = [.. frames.Where(f => levels[f] >= loudest - range)];
        return [.. runs
            .Select(r => new Run(
                Math.Max(r.Start, (near[0] - 2) * ISpeechDetector.FrameSamples),
                Math.Min(r.End, (near[^1] + 3) * ISpeechDetector.FrameSamples)))
            .Where(r => r.Length > 0)];
    }

    private readonly record struct Run(int Start, int End)
    {
        public int Length => End - Start;
    }
}
