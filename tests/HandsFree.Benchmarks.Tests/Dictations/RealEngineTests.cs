using HandsFree.Benchmarks.Dictations;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>One visit with recordings and the built-in engine.</summary>
public sealed class RealEngineTests
{
    [Fact]
    public void A_visit_with_recordings_saves_nothing_wrong_and_is_heard_once()
    {
        string[] clips = [Shared.Audio("dictation-synthetic"), Shared.Audio("dialogue-synthetic")];
        DirectoryInfo cache = Directory.CreateTempSubdirectory("handsfree-dictations-");
        try
        {
            DictationOptions options = new()
            {
                Count = 5, Seed = 1, Engine = "words", MissRates = [0], Clips = clips, Material = 2, Cache = cache.FullName, Processes = 1, Json = "",
            };
            (IReadOnlyList<PlayedVisit>? visits, string line) = DictationRun.Play(options, TextWriter.Null);
            PlayedVisit visit = visits.ShouldNotBeNull(line).ShouldHaveSingleItem();
            visit.Result.Rows.Count(r => r.Verdict == Verdict.Right).ShouldBeGreaterThan(0);
            visit.Result.Rows.ShouldNotContain(r => r.Verdict == Verdict.Wrong);
            visit.Result.Findings.ShouldNotContain(f => f.Kind == Finding.Unsaid);
            DictationRun.Play(options, TextWriter.Null).Line.ShouldContain("; 0 hearings took 0 s, ");
        }
        finally
        {
            cache.Delete(recursive: true);
        }
    }
}
