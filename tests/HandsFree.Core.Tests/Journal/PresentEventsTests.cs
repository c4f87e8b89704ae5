using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Journal;

public sealed class PresentEventsTests
{
    private static readonly DateTimeOffset Begin = new(2026, 1, 1, 7, 0, 0, TimeSpan.Zero);

    private static readonly Roster Home = new([.. Enumerable.Range(0, 6).Select(i => new Resident
    {
        Id = $"r{i}",
        Name = $"Person {i}",
        Room = i + 1,
        Born = new DateOnly(1940, 1, 1),
    })]);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_handover_of_the_present_is_the_same_from_the_view_as_from_the_whole_journal(int seed)
    {
        JournalEvent[] all = Invented(seed, days: 120);
        PresentEvents present = new();
        Array.ForEach(all, present.Add);
        present.Trim();

        present.Events.Count.ShouldBeLessThan(all.Length / 2);
        foreach (TimeSpan back in new[] { TimeSpan.FromHours(8), TimeSpan.FromHours(24), TimeSpan.FromDays(13) })
        {
            DateTimeOffset since = all[^1].At - back;
            Lines(present.Events, since).ShouldBe(Lines(all, since));
        }
    }

    [Fact]
    public void A_clock_that_ran_ahead_for_a_while_pushes_nothing_out_and_one_that_was_set_back_is_noticed()
    {
        PresentEvents present = new();
        for (int i = 0; i < 3000; i++)
        {
            present.Add(Reading($"p{i}", $"r{i % 6}", HeartRate.FromPerMinute(70), Begin.AddMinutes(i)));
        }

        present.WentBack.ShouldBeFalse();
        present.Add(Reading("ahead", "r1", HeartRate.FromPerMinute(70), Begin.AddYears(10)));
        present.Trim();
        present.Events.Count.ShouldBe(3001);
        present.Add(Reading("back", "r1", HeartRate.FromPerMinute(70), Begin.AddMinutes(3001)));
        present.WentBack.ShouldBeTrue();
    }

    [Fact]
    public void Weights_of_half_a_year_and_the_last_of_each_sign_stay()
    {
        PresentEvents present = new();
        present.Add(Reading("old", "r2", HeartRate.FromPerMinute(70), Begin));
        for (int day = 0; day < 365; day++)
        {
            present.Add(Reading($"w{day}", "r1", Weight(150), Begin.AddDays(day)));
        }

        present.Trim();

        present.Events.OfType<ReadingRecorded>().Count(r => r.Resident == "r1").ShouldBe(250); // 200 days before the earliest of the last 50 events
        present.Events.OfType<ReadingRecorded>().ShouldContain(r => r.Id == "old");
    }

    private static string[] Lines(IEnumerable<JournalEvent> journal, DateTimeOffset since) =>
        [.. HandoverAnswerer.Answer(HandoverView.From(journal, Home, new(new Core.Dialogue.DialogueSettings().Due), since), new Meaning.Query(QueryKind.Handover, null), HandoverCursor.Start).Items.Select(i => i.Text)];

    private static JournalEvent[] Invented(int seed, int days)
    {
        Random random = new(seed);
        List<JournalEvent> all = [];
        for (int i = 0; i < days * 12; i++)
        {
            DateTimeOffset at = Begin.AddHours(i * 2);
            string resident = $"r{random.Next(6)}";
            all.Add(random.Next(10) switch
            {
                0 => new NotTakenRecorded($"e{i}", "a", at, resident, VitalSign.Pulse, NotTakenReason.Asleep, Heard(at), "asleep"),
                1 => new ReportOpened($"e{i}", "a", at, resident, ReportUrgency.ThisShift, VitalSign.Pulse, Last(all, resident), "pulse", ["rule"]),
                2 when all.OfType<ReportOpened>().LastOrDefault() is { } report => new ReportAcknowledged($"e{i}", "n", at, report.Id),
                3 when Last(all, resident) is [var last] => new EnteredInError($"e{i}", "a", at, resident, last, "undo"),
                4 when Last(all, resident) is [var last] => new RecheckAsked($"e{i}", "a", at, resident, VitalSign.Pulse, last, "rule", "Count again.", at),
                _ => Reading($"e{i}", resident, HeartRate.FromPerMinute(60 + random.Next(40)), at),
            });
        }

        return [.. all];
    }

    private static string[] Last(List<JournalEvent> all, string resident) =>
        all.OfType<ReadingRecorded>().LastOrDefault(r => r.Resident == resident) is { } last ? [last.Id] : [];

    private static ReadingRecorded Reading(string id, string resident, Quantity value, DateTimeOffset at)
    {
        Understood understood = new(Heard(at), new Reading(value, Circumstances.Unsaid));
        Confirmed confirmed = ReadBack.Of(understood, "read back", at).ByYes(Heard(at), new Attribution("a", at, at));
        return new ReadingRecorded(id, "a", at, resident, confirmed, new Decision(Outcome.Accept, null, [], false, "hash"), false, null);
    }

    private static Heard Heard(DateTimeOffset at) => new("words", 0.99, null, null, null, Typed: false, at);

    private static Quantity Weight(decimal pounds) => QuantityFrom.Number(VitalSign.Weight, new SpokenNumber(pounds, null), "lb")!;
}
