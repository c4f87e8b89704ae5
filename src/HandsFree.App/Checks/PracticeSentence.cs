using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Audio;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Levels;
using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.App.Checks;

/// <summary>One sentence, spoken by who will wear the microphone: its level in words, and whether it is understood.</summary>
/// <param name="hearing">Finds the speech.</param>
/// <param name="recognizer">Hears it.</param>
/// <param name="grammar">The grammar of readings.</param>
internal sealed class PracticeSentence(FileHearing hearing, IRecognizer recognizer, Grammar grammar)
{
    /// <summary>What is to be said.</summary>
    public const string Sentence = "pulse seventy two";

    private const string Meaning = """{"kind": "pulse", "value": 72}""";

    private static readonly TimeSpan Length = TimeSpan.FromSeconds(6);
    private static readonly TimeSpan MeterEvery = TimeSpan.FromMilliseconds(500);

    /// <summary>Records for six seconds and judges.</summary>
    /// <param name="microphone">Open.</param>
    /// <param name="meter">Takes a line of the level meter each half second.</param>
    public CheckResult Run(ICaptureStream microphone, Action<string> meter)
    {
        List<float> said = [];
        float[] frame = new float[SoundFrame.Samples];
        int each = SampleTime.Samples(MeterEvery);
        while (said.Count < SampleTime.Samples(Length))
        {
            if (microphone.Read(frame, out _) is { } fault)
            {
                return new("practice", CheckState.Failed, fault.Text);
            }

            said.AddRange(frame);
            if (said.Count % each == 0)
            {
                double level = LevelMeter.RmsDbfs(said.ToArray().AsSpan(said.Count - each));
                meter(FormattableString.Invariant($"{LevelWords.Meter(level)} {level:0} dBFS"));
            }
        }

        return Judge([.. said]);
    }

    /// <summary>Judges what was said.</summary>
    public CheckResult Judge(float[] said)
    {
        if (hearing.Speech(new AudioClip(said)) is not { } speech)
        {
            return new("practice", CheckState.Warning, "nobody was heard: see that the microphone is not muted and is the right one (handsfree devices), then speak");
        }

        (CheckState state, string words) = LevelWords.Of(speech.Samples);
        Speech.Hearing heard = recognizer.Hear(speech.Samples, grammar);
        bool right = heard is { Outcome: HearingOutcome.Heard, Best: { } best } && MeaningJson.Of(best) == Meaning;
        return right
            ? new("practice", state, $"understood \"{Sentence}\"; {words}")
            : new("practice", CheckState.Warning, $"not understood; {words}");
    }
}
