using System.Text.Json.Nodes;
using HandsFree.App.Hear;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>Holds a hearing against what was said.</summary>
internal static class Judge
{
    /// <summary>The row of one recording, without its times.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="grammar">The grammar in force.</param>
    /// <param name="state">Its name.</param>
    /// <param name="heard">What was heard.</param>
    public static HeardRow Row(Transcript said, Grammar grammar, string state, Speech.Hearing heard)
    {
        JsonNode?[] ofWords = [.. Matcher.Match(grammar, said.Words).Select(value => JsonNode.Parse(MeaningJson.Of(new(value, said.Words, 1))))];
        JsonNode? expected = said.HasMeaning ? said.Meaning : ofWords.FirstOrDefault();
        JsonNode?[] meant = said.HasMeaning && said.Meaning is not null ? [said.Meaning] : ofWords;
        HeardCandidate[] candidates = [.. heard.Candidates.Select(c => Candidate(c, meant))];
        HeardCandidate? best = heard.Outcome == HearingOutcome.Heard ? candidates[0] : null;
        return new()
        {
            Set = said.SetName,
            File = said.File,
            Speaker = said.Speaker,
            Kind = said.HasMeaning ? said.Kind : expected is null ? UtteranceKind.NoReading : said.Kind,
            State = state,
            Words = said.Words,
            Expected = expected?.DeepClone(),
            InGrammar = ofWords.Length > 0,
            Verdict = Verdict(best, expected, ofWords.Length > 0),
            StrayYes = best is { Right: false } && UtteranceKind.IsYes(best.Meaning),
            Outcome = heard.Outcome.ToString(),
            Transcript = heard.Transcript,
            Candidates = candidates,
            NoneProbability = Math.Max(0, 1 - candidates.Sum(c => c.Probability)),
            Margin = heard.RunnerUp is not null && double.IsFinite(heard.Margin) ? heard.Margin : null,
            AudioSeconds = 0,
            SpeechSeconds = 0,
            DecodeMilliseconds = 0,
        };
    }

    private static HeardCandidate Candidate(Candidate candidate, JsonNode?[] meant)
    {
        JsonNode? meaning = JsonNode.Parse(MeaningJson.Of(candidate));
        return new(meaning, candidate.Words, candidate.Probability, meant.Any(m => SameMeaning.Of(m, meaning)));
    }

    /// <summary>A guess that is heard in speech without a reading is no harm: the dialogue never takes one.</summary>
    private static Verdict Verdict(HeardCandidate? best, JsonNode? expected, bool inGrammar) => (best, expected) switch
    {
        (null, null) => Results.Verdict.Refused,
        (null, _) => inGrammar ? Results.Verdict.NotHeard : Results.Verdict.OutsideGrammar,
        (_, null) => best.Right || UtteranceKind.IsGuess(best.Meaning) ? Results.Verdict.Refused : Results.Verdict.LetIn,
        _ => best.Right ? Results.Verdict.Right : UtteranceKind.IsValue(best.Meaning) ? Results.Verdict.WrongValue : Results.Verdict.WrongOther,
    };
}
