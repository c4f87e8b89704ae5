using System.Diagnostics;
using HandsFree.App.Hear;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using HandsFree.Speech.Neural;

string folder = args[1];
int every = args.Length > 2 ? int.Parse(args[2]) : 1;
string? userGrammar = args.Length > 3 ? args[3] : null;
string top = Environment.GetEnvironmentVariable("HANDSFREE_REPO")!;
using var recognizer = NeuralRecognizer.Open(Path.Combine(Environment.GetEnvironmentVariable("HANDSFREE_MODELS")!, "moonshine-base-en"), Path.Combine(top, ".handsfree/cache"));
var shelf = new GrammarShelf(Path.Combine(top, "grammars"));
using var vad = new SileroSpeechDetector(Path.Combine(top, ".handsfree/vad/silero_vad_v6.onnx"));
double audio = 0, decode = 0;
int wrong = 0, none = 0, let = 0, n = 0;
foreach (Transcript t in Transcript.Read(folder).Where((_, i) => i % every == 0))
{
    var clip = WavReader.Read(Path.Combine(folder, t.File)).Clip!;
    var seg = WholeFileSegmenter.Segment(vad, clip.Samples);
    if (seg is null) { Console.WriteLine($"{t.File}\tNOSPEECH\t{t.Words}"); none++; continue; }
    string state = Environment.GetEnvironmentVariable("HF_STATE") ?? ("rcoqthm".Contains(t.File[0]) ? "readings" : t.File[0] switch { 'i' => "identity", 'k' => "count", 'v' => "handover", _ => "confirmation" });
    Grammar g = userGrammar is null ? shelf.Of(state) : Grammar.Load(userGrammar);
    var clock = Stopwatch.StartNew();
    Hearing h = recognizer.Hear(seg.Samples, g);
    double ms = clock.Elapsed.TotalMilliseconds;
    audio += clip.Samples.Length / 16000.0; decode += ms / 1000;
    n++;
    string said = h.Outcome == HearingOutcome.Heard ? MeaningJson.Of(h.Best!) : h.Outcome.ToString();
    string verdict;
    if (userGrammar is not null)
    {
        static string D(string w) => string.Concat(w.Split(' ').Select(x => HandsFree.Language.Numbers.NumberWord.Of(x) is { } k ? (k.Kind == HandsFree.Language.Numbers.NumberKind.Tens ? (k.Value / 10).ToString() + "T" : k.Value.ToString()) : x)).Replace("T1","1").Replace("T2","2").Replace("T3","3").Replace("T4","4").Replace("T5","5").Replace("T6","6").Replace("T7","7").Replace("T8","8").Replace("T9","9").Replace("T","0");
        verdict = h.Outcome != HearingOutcome.Heard ? "none" : D(h.Best!.Words) == D(t.Words) ? "ok" : "WRONG";
    }
    else verdict = h.Outcome != HearingOutcome.Heard ? (t.Meaning is null ? "ok" : t.IsUnused ? "ok" : "none") : t.Means(said) ? "ok" : t.Meaning is null ? (said.Contains("hedge") ? "ok" : "LETIN") : "WRONG";
    if (verdict == "none") none++; if (verdict == "WRONG") wrong++; if (verdict == "LETIN") let++;
    if (verdict != "ok" || (h.Best is { } b && h.Outcome == HearingOutcome.Heard && h.Margin < 2)) Console.WriteLine($"{verdict}\t{t.File}\t{t.Words}\t{said}\tfree='{h.Transcript}'\tp={h.Best?.Probability:F3} margin={h.Margin:F1} runner={h.RunnerUp?.Meaning} {ms:F0}ms");
}
Console.WriteLine($"n {n} wrong {wrong} none {none} let {let}  rtf {decode / audio:F3} peak {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MB");
return 0;
