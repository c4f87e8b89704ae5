using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.People;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Journal;

public sealed class ImportedReadingsTests
{
    private static readonly DateTimeOffset Now = Notation.Now;
    private static readonly Resident Ada = new() { Id = "r1", Name = "Ada Quill", Room = 12, Born = new DateOnly(1931, 3, 9) };

    [Fact]
    public void What_another_system_recorded_is_a_past_reading_and_none_of_ours()
    {
        JournalEvent[] journal = [Imported("i-1", BodyWeight.FromPounds(160), 28)];
        PastReadings.Of(journal, "r1").ShouldHaveSingleItem().CountsAsUsual.ShouldBeTrue();
        PastReadings.Of(journal, "r2").ShouldBeEmpty();
        PastReadings.Standing(journal).ShouldBeEmpty();
        RecheckChains.Of(journal, "r1").ShouldBeEmpty();
    }

    // CMS MDS 3.0, K0300: a loss of 5 % or more in 30 days (read); 160 to 151 lb is 5.6 %.
    [Fact]
    public void A_weight_of_another_system_shows_the_loss_since()
    {
        Reading now = new(BodyWeight.FromPounds(151), Circumstances.Unsaid);
        Decision Decide(params JournalEvent[] journal) => TestRules.Defaults.Decide(now, DecisionContexts.New(journal, Ada, Now, 2, new HashSet<string>()));
        Decide().Outcome.ShouldBe(Outcome.Accept);
        Decide(Imported("i-1", BodyWeight.FromPounds(160), 28)).Outcome.ShouldBe(Outcome.ReportThisShift);
        Decide(Imported("i-1", BodyWeight.FromPounds(160), 28), new EnteredInError("e", "nurse-1", Now, "r1", "i-1", "of her sister")).Outcome.ShouldBe(Outcome.Accept);
        Decide(Imported("i-1", BodyWeight.FromPounds(160), -1)).Outcome.ShouldBe(Outcome.Accept, "a time that is not yet is no past");
    }

    [Fact]
    public void Five_of_them_make_a_usual_value()
    {
        JournalEvent[] journal = [.. Enumerable.Range(1, 5).Select(day => Imported($"i-{day}", HeartRate.FromPerMinute(54 + day), day))];
        Reading pulse = new(HeartRate.FromPerMinute(58), Circumstances.Unsaid);
        UsualRange.Of(LimitedValue.Pulse, pulse, DecisionContexts.New(journal, Ada, Now, 0, new HashSet<string>()))!.Median.ShouldBe(57);
        UsualRange.Of(LimitedValue.Pulse, pulse, DecisionContexts.New(journal[..4], Ada, Now, 0, new HashSet<string>())).ShouldBeNull();
    }

    [Fact]
    public void The_present_keeps_imported_weights_of_half_a_year_and_open_proposals()
    {
        PresentEvents present = new();
        OrderProposed proposal = new("p-1", "nurse-1", Now.AddDays(-60), "r1", new(LimitedValue.Pulse, 45, null, "Dr Example", new(2026, 2, 1)), "orders.json, Goal/1");
        present.Add(Imported("i-1", BodyWeight.FromPounds(160), 150, enteredDaysAgo: 60));
        present.Add(Imported("i-2", HeartRate.FromPerMinute(60), 150, enteredDaysAgo: 60));
        present.Add(proposal);
        for (int i = 0; i < 60; i++)
        {
            present.Add(new RecordViewed($"v-{i}", "nurse-1", Now, "handover"));
        }

        present.Trim();
        present.Events.Select(e => e.Id).Where(id => !id.StartsWith('v')).ShouldBe(["i-1", "p-1"]);
        Proposals.Open(present.Events).ShouldBe([proposal]);
        Proposals.Open([.. present.Events, new ProposalSettled("s", "nurse-1", Now, "p-1", true, null)]).ShouldBeEmpty();
    }

    [Fact]
    public void Only_a_nurse_imports_and_settles()
    {
        JournalEvent[] hers = [Imported("i-1", BodyWeight.FromPounds(160), 28), new ProposalSettled("s", "nurse-1", Now, "p-1", true, null)];
        foreach (JournalEvent each in hers)
        {
            Authority.Least(each).ShouldBe(Role.Nurse);
            JournalEventCodec.Decode(JournalEventCodec.Encode(each)).ShouldBe(each);
        }
    }

    private static ReadingImported Imported(string id, Quantity value, int daysAgo, int enteredDaysAgo = 0) =>
        new(id, "nurse-1", Now.AddDays(-enteredDaysAgo), "r1", new Reading(value, Circumstances.Unsaid), Now.AddDays(-daysAgo), "past.json, Observation/1");
}
