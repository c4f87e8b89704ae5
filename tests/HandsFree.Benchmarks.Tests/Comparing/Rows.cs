using System.Text.Json.Nodes;
using HandsFree.Benchmarks.Results;

namespace HandsFree.Benchmarks.Tests.Comparing;

/// <summary>Results made for tests.</summary>
internal static class Rows
{
    public static HearingResult Result(string set, params (Verdict Verdict, double Probability)[] rows) => new()
    {
        Version = HearingResult.CurrentVersion,
        Engine = "neural",
        Date = new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero),
        Sets = [set],
        Every = 1,
        Threads = 1,
        ListeningFor = null,
        Noise = "babble",
        SnrDb = 15,
        Seed = 1,
        Microphone = "band8k",
        Host = new(2, "made up", ".NET"),
        LoadSeconds = 2,
        PeakMemoryMebibytes = 400,
        Rows = [.. rows.Select((r, i) => Row(set, i, r.Verdict, r.Probability))],
    };

    private static HeardRow Row(string set, int number, Verdict verdict, double probability)
    {
        bool meant = verdict is not (Verdict.Refused or Verdict.LetIn);
        bool heard = verdict is Verdict.Right or Verdict.WrongValue or Verdict.WrongOther or Verdict.LetIn;
        int value = verdict == Verdict.Right ? 70 : 80;
        return new()
        {
            Set = set,
            File = $"{number:00}.wav",
            Speaker = number % 2 == 0 ? "ann" : "bob",
            Kind = meant ? "pulse" : "no reading",
            State = "readings",
            Words = meant ? "pulse seventy" : "good morning",
            Expected = meant ? JsonNode.Parse("""{"kind":"pulse","value":70}""") : null,
            InGrammar = meant,
            Verdict = verdict,
            StrayYes = false,
            Outcome = heard ? "Heard" : "NoReading",
            Transcript = "Pulse",
            Candidates = heard ? [new(JsonNode.Parse($$"""{"kind":"pulse","value":{{value}}}"""), "pulse", probability, verdict == Verdict.Right)] : [],
            NoneProbability = heard ? 1 - probability : 1,
            Margin = verdict == Verdict.LetIn ? 2.5 : null,
            AudioSeconds = 2,
            SpeechSeconds = 1,
            DecodeMilliseconds = 100 + (10 * number),
        };
    }
}
