using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Dialogue;
using HandsFree.Core.Tests.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Journal;

/// <summary>What a decision knows, whatever the clock of the laptop did. (Clocks are set back and ahead by network time, by a flat battery,
/// by two systems on one laptop: common practice, no source.)</summary>
public sealed class DecisionContextsTests
{
    private static readonly IRulebook Rules = Rulebook.Load().Rulebook.ShouldNotBeNull();

    [Theory]
    [InlineData(0)]
    [InlineData(-30)]
    [InlineData(-59)]
    [InlineData(-60)]
    [InlineData(-180)]
    [InlineData(-60 * 24 * 365)]
    [InlineData(180)]
    [InlineData(60 * 24 * 365)]
    public void A_clock_that_jumps_inside_a_set_changes_no_decision(int minutes)
    {
        Talk talk = Talk.WithMary(rules: Rules).Go("respirations twenty six", "two six", "oxygen ninety two on room air", "nine two", $"(after {minutes} min)",
            "temperature one hundred point six by mouth", "one zero zero point six");

        ReadingRecorded temperature = talk.Journal.OfType<ReadingRecorded>().Last();
        temperature.Confirmed.Reading.Value.ShouldBe(Core.Quantities.BodyTemperature.FromFahrenheit(100.6m));
        temperature.Decision.Outcome.ShouldBe(Outcome.ReportNow, $"clock moved by {minutes} minutes");
        temperature.Decision.Reasons.ShouldContain(r => r.Rule == "set.three-pointers");
    }

    [Fact]
    public void The_latest_of_a_sign_is_the_one_that_was_said_last_also_where_the_clock_went_back()
    {
        Entries entries = Visit().Reading("respirations 26").After(TimeSpan.FromMinutes(-40)).Reading("respirations 18");

        Signs(entries, entries.Now.AddMinutes(2)).ShouldBe(["respirations 26", "respirations 18"]);
    }

    [Fact]
    public void What_was_taken_at_another_visit_is_as_old_as_its_clock_says()
    {
        Entries entries = Visit().Reading("respirations 26").After(TimeSpan.FromHours(3)).Identified();
        DecisionContext context = Context(entries, entries.Now.AddMinutes(1));

        context.Earlier.ShouldHaveSingleItem().MeasuredAt.ShouldBe(entries.Now.AddHours(-3).AddMinutes(-2));
    }

    [Fact]
    public void After_another_resident_or_a_lock_it_is_another_visit()
    {
        foreach (Func<Entries, Entries> left in (Func<Entries, Entries>[])[e => e.Identified("r2"), e => e.Locked(), e => e.Round()])
        {
            Entries entries = left(Visit().Reading("respirations 26")).After(TimeSpan.FromHours(3));

            Context(entries, entries.Now).Earlier.ShouldHaveSingleItem().MeasuredAt.ShouldBeLessThan(entries.Now.AddHours(-3));
        }
    }

    [Fact]
    public void What_another_aide_does_elsewhere_ends_no_visit()
    {
        Entries entries = Visit().Reading("respirations 26").By("aide-2").Identified("r2").By("aide-1").After(TimeSpan.FromHours(-3));

        Context(entries, entries.Now).Earlier.ShouldHaveSingleItem().MeasuredAt.ShouldBe(entries.Now);
    }

    [Fact]
    public void A_reading_of_the_visit_before_that_shows_a_later_time_within_the_hour_belongs_to_the_set()
    {
        Entries entries = Visit().Reading("respirations 26").After(TimeSpan.FromMinutes(-30)).Identified("r2").Identified();

        Context(entries, entries.Now).Earlier.ShouldHaveSingleItem().MeasuredAt.ShouldBe(entries.Now);
    }

    [Fact]
    public void One_that_shows_a_time_far_ahead_stays_there_for_it_must_not_be_the_latest_for_months()
    {
        Entries entries = Visit().Reading("respirations 16").After(TimeSpan.FromDays(-300)).Identified("r2").Identified().Reading("respirations 26");

        Signs(entries, entries.Now).ShouldBe(["respirations 26", "respirations 16"]);
        Context(entries, entries.Now).Earlier[1].MeasuredAt.ShouldBeGreaterThan(entries.Now.AddDays(299));
    }

    [Fact]
    public void A_late_entry_is_decided_as_of_when_it_was_measured()
    {
        // "Before": measured when the aide stopped, four hours ago; what is known of the set then is known of it now.
        Talk talk = Talk.WithMary(rules: Rules).Go("respirations twenty six", "two six", "oxygen ninety two on room air", "nine two", "stop", "(after 240 min)",
            "room twelve bed b", "yes", "march third", "temperature one hundred point six by mouth", "before", "one zero zero point six");

        ReadingRecorded temperature = talk.Journal.OfType<ReadingRecorded>().Last();
        temperature.Confirmed.By.Late.ShouldBeTrue();
        temperature.Decision.Outcome.ShouldBe(Outcome.ReportNow);
    }

    [Fact]
    public void The_read_back_of_a_late_entry_is_as_strong_as_what_was_known_when_it_was_measured_asks_for()
    {
        Talk talk = Talk.WithMary(rules: Rules);
        DateTimeOffset stopped = TestHome.Morning.AddHours(-4);
        Turn late = new(
            new Parts(Rules, TestHome.Roster, new DialogueSettings()),
            talk.State with { Set = talk.State.Set! with { StoppedAt = stopped, Late = true } },
            new DialogueEvent.NothingHeard(TestHome.Morning));

        late.Context(Notation.Reading("pulse 72")).At.ShouldBe(stopped);
        late.With(late.Set with { Late = false }).Context(Notation.Reading("pulse 72")).At.ShouldBe(TestHome.Morning);
    }

    [Fact]
    public void A_plan_counts_where_it_stood_when_the_reading_was_measured()
    {
        Entries entries = new Entries().Reading("pulse 120").Report(Core.Quantities.VitalSign.Pulse, "1").Plan("2", LimitedValue.Pulse, null, 130, 8);

        Context(entries, entries.Now.AddHours(1)).Resident.OrderedLimits.ShouldHaveSingleItem();
        Context(entries, entries.Now.AddHours(9)).Resident.OrderedLimits.ShouldBeEmpty();
        Context(entries, entries.Now.AddHours(-1)).Resident.OrderedLimits.ShouldBeEmpty();
    }

    [Fact]
    public void What_was_measured_under_an_open_report_is_not_usual_wherever_it_is_decided()
    {
        Entries entries = new Entries().Reading("pulse 70").Reading("pulse 120").Report(Core.Quantities.VitalSign.Pulse, "2").Reading("pulse 118").Reading("pulse 70");
        var last = (ReadingRecorded)entries.All[^1];

        Context(entries, entries.Now).Earlier.Select(p => p.CountsAsUsual).ShouldBe([true, false, false, false]);
        DecisionContexts.Again(entries.All, Notation.Resident(""), last, 0, new HashSet<string>()).Earlier
            .Select(p => p.CountsAsUsual).ShouldBe([true, false, false]);
    }

    [Fact]
    public void A_reading_that_is_replaced_is_not_known_to_the_one_that_replaces_it()
    {
        Entries entries = Visit().Reading("pulse 44").Reading("pulse 70");

        DecisionContexts.New(entries.All, Notation.Resident(""), entries.Now, 0, new HashSet<string>(), without: new HashSet<string> { "2" })
            .Earlier.ShouldHaveSingleItem();
    }

    [Fact]
    public void Decided_again_a_reading_knows_what_was_entered_before_it_and_late_what_was_measured_before_it()
    {
        Entries entries = Visit().Reading("respirations 26").Reading("pulse 70").Reading("oxygen 92");
        var pulse = (ReadingRecorded)entries.All[2];

        DecisionContext context = DecisionContexts.Again(entries.All, Notation.Resident(""), pulse, 2, new HashSet<string>());

        context.At.ShouldBe(pulse.Confirmed.By.MeasuredAt);
        context.Earlier.Where(p => p.MeasuredAt <= context.At).ShouldHaveSingleItem().Reading.ShouldBe(Notation.Reading("respirations 26"));
    }

    private static Entries Visit() => new Entries().Identified();

    private static DecisionContext Context(Entries entries, DateTimeOffset at) =>
        DecisionContexts.New(entries.All, Notation.Resident(""), at, 0, new HashSet<string>());

    private static IEnumerable<string> Signs(Entries entries, DateTimeOffset at) => Context(entries, at).Earlier
        .Select(p => $"{p.Reading.Value.Sign.ToString().ToLowerInvariant()} {((Core.Quantities.RespiratoryRate)p.Reading.Value).PerMinute}");
}
