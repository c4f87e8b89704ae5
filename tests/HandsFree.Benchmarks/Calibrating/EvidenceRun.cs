using HandsFree.App.Hearing;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using HandsFree.Speech.Posterior;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>Gathers an engine's evidence of folders of recordings.</summary>
/// <param name="engine">The engine.</param>
/// <param name="files">Finds the speech.</param>
internal sealed class EvidenceRun(IGathersEvidence engine, FileHearing files)
{
    /// <summary>One row for each Nth recording of a folder.</summary>
    /// <param name="folder">The recordings.</param>
    /// <param name="every">N.</param>
    /// <param name="grammarOf">The grammar in force for a recording, and its name.</param>
    /// <param name="condition">The noise's name.</param>
    /// <param name="sounds">Puts the recording under noise.</param>
    public IEnumerable<EvidenceRow> Gather(
        IReadOnlyList<Transcript> folder, int every, Func<Transcript, (Grammar Grammar, string Name)> grammarOf, string condition, SoundMaker sounds)
    {
        foreach (Transcript said in folder.Where((_, i) => i % every == 0))
        {
            WavResult read = WavReader.Read(said.FilePath);
            var clip = read.IsRead ? read.Clip : throw new InvalidDataException(read.Error);
            var (grammar, name) = grammarOf(said);
            SpeechSegment? speech = files.Speech(clip with { Samples = sounds.Of(clip.Samples, said, folder) });
            Evidence? found = speech is null ? null : engine.Evidence(speech.Samples, grammar);
            yield return Row(said, grammar, name, condition, found);
        }
    }

    private static EvidenceRow Row(Transcript said, Grammar grammar, string state, string condition, Evidence? found)
    {
        IReadOnlyList<FoundValue> values = found?.Values ?? [];
        HeardRow judged = Judge.Row(said, grammar, state, new(HearingOutcome.NoReading, [.. values.Select(v => new Candidate(v.Meaning, v.Words, 0))], ""));
        return new()
        {
            Condition = condition,
            Set = said.SetName,
            File = said.File,
            Speaker = said.Speaker,
            State = state,
            Words = said.Words,
            IsSentence = judged.Expected is not null && judged.InGrammar,
            Transcript = found?.Transcript ?? "",
            Facts = found?.Facts ?? new Dictionary<string, double>(),
            Values = [.. values.Zip(judged.Candidates, (v, c) => new EvidenceValue(
                c.Meaning?.ToJsonString() ?? "", v.Words, v.Facts, c.Right, UtteranceKind.IsGuess(c.Meaning), UtteranceKind.IsYes(c.Meaning)))],
        };
    }
}
