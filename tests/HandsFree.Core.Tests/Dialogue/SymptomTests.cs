using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A yes stands for one symptom, and what was not answered is not written down as one.</summary>
public sealed class SymptomTests
{
    private static readonly IRulebook Rules = Rulebook.Load().Rulebook.ShouldNotBeNull();
    private static readonly string[] High = ["blood pressure one eighty five over ninety", "one eight five over nine zero"];

    [Fact]
    public void A_yes_to_several_symptoms_asks_for_each()
    {
        Talk talk = Again();
        talk.Said.ShouldBe("Chest pain, headache, or weakness?");
        talk.Go("yes").Said.ShouldBe("Chest pain?");
        talk.Go("no").Said.ShouldBe("Headache?");
        talk.Go("yes").Said.ShouldBe("Weakness?");
        ReportOpened report = talk.Go("no").Journal.OfType<ReportOpened>().Last();
        report.Urgency.ShouldBe(ReportUrgency.Now);
        report.Situation.ShouldNotContain("chest pain of any strength");
    }

    [Fact]
    public void Without_an_answer_it_is_as_grave_as_it_could_be_and_no_symptom_is_written()
    {
        Talk talk = Again().Go("yes", "no", "stop");
        ReadingRecorded reading = talk.Journal.OfType<ReadingRecorded>().Last();
        reading.Decision.Outcome.ShouldBe(Outcome.ReportNow);
        reading.Decision.Reasons[0].Text.ShouldBe("headache or weakness: asked, no answer");
        talk.Journal.OfType<ReportOpened>().Last().Situation.ShouldNotContain("chest pain of any strength");
    }

    [Fact]
    public void No_to_all_is_one_answer() =>
        Again().Go("no", "next resident").Journal.OfType<ReportOpened>().Last().Urgency.ShouldBe(ReportUrgency.ThisShift);

    private static Talk Again()
    {
        Talk talk = Talk.WithMary(rules: Rules).Go(High);
        return talk.Said.StartsWith("Chest", StringComparison.Ordinal) ? talk : talk.Go("(after 6 min)").Go("one eight seven over nine zero", "one eighty seven over ninety");
    }
}
