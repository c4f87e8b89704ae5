using System.Text;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Tests.Dialogue;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Journal;

public sealed class JournalEventCodecTests
{
    private static Talk LongTalk() => Talk.WithMary().Go(
        "(margin 1.5 pulse forty four | pulse sixty four)", "four four", "forty six", "four six", "temperature ninety eight six by mouth", "no",
        "nine eight point eight", "yes", "oxygen refused", "yes", "weight one hundred fifty four point three pounds", "yes", "undo", "yes", "blood pressure one two zero over eight zero", "(nothing)",
        "(nothing)", "(nothing)", "next resident", "room four", "no", "goodbye");

    [Fact]
    public void Every_event_comes_back_as_it_was()
    {
        IReadOnlyList<JournalEvent> journal = LongTalk().Journal;
        journal.Select(e => e.GetType()).Distinct().Count().ShouldBe(11);
        foreach (JournalEvent entry in journal)
        {
            byte[] bytes = JournalEventCodec.Encode(entry);
            JournalEvent back = JournalEventCodec.Decode(bytes);
            back.GetType().ShouldBe(entry.GetType());
            JournalEventCodec.Encode(back).ShouldBe(bytes);
        }
    }

    [Fact]
    public void A_confirmed_reading_keeps_what_was_heard_read_back_and_how_it_was_confirmed()
    {
        var entry = LongTalk().Journal.OfType<ReadingRecorded>().First();
        var back = (ReadingRecorded)JournalEventCodec.Decode(JournalEventCodec.Encode(entry));
        back.Confirmed.ShouldBe(entry.Confirmed);
        back.Confirmed.ReadBack.Understood.Heard.RunnerUp.ShouldBe("pulse sixty four");
        back.Confirmed.ReadBack.Text.ShouldBe("pulse, four four");
    }

    [Fact]
    public void The_form_of_the_journal() =>
        Golden.Match(string.Join('\n', LongTalk().Journal.Select(Plain).Select(e => Encoding.UTF8.GetString(JournalEventCodec.Encode(e)))));

    // The fingerprint is another one with every build.
    private static JournalEvent Plain(JournalEvent happened) => happened is RoundStarted started ? started with { Fingerprint = "4567" } : happened;

    [Fact]
    public void No_name_is_in_the_journal() =>
        string.Join('\n', LongTalk().Journal.Select(e => Encoding.UTF8.GetString(JournalEventCodec.Encode(e)))).ShouldNotContain("Miller");

    [Fact]
    public void An_event_that_was_acknowledged_comes_back() =>
        JournalEventCodec.Decode(JournalEventCodec.Encode(new ReportAcknowledged("n-1", "nurse-1", TestHome.Morning, "s1-9")))
            .ShouldBe(new ReportAcknowledged("n-1", "nurse-1", TestHome.Morning, "s1-9"));

    [Fact]
    public void The_form_of_what_happens_to_a_report()
    {
        DateTimeOffset at = TestHome.Morning;
        JournalEvent[] events =
        [
            new ReportTold("n-1", "aide-1", at, "s1-9", Told.Nurse, "nurse-1", ToldHow.InPerson, at.AddMinutes(-2)),
            new ReportTold("n-2", "nurse-1", at, "s1-9", Told.Prescriber, null, ToldHow.ByPhone, at),
            new ReportAcknowledged("n-3", "nurse-1", at, "s1-9") { Advised = "count again in one hour" },
            new PlanMade("n-4", "nurse-1", at, "r-4", "s1-9", LimitedValue.Pulse, 50, 115.5m, at.AddHours(6), "rest in bed"),
            new PlanWithdrawn("n-6", "nurse-1", at, "r-4", "s1-9", "n-4", "pulse has settled"),
            new PlanMade("n-5", "nurse-1", at, "r-4", "s1-9", LimitedValue.OxygenSaturation, 88, null, at.AddHours(6), ""),
            new ReportClosed("n-6", "nurse-1", at, "s1-9", "as usual"),
        ];

        events.Select(e => JournalEventCodec.Decode(JournalEventCodec.Encode(e))).ShouldBe(events);
        Golden.Match(string.Join('\n', events.Select(e => Encoding.UTF8.GetString(JournalEventCodec.Encode(e)))));
    }

    [Theory]
    [InlineData("", "not a journal event")]
    [InlineData("null", "without schema or entry")]
    [InlineData("""{"schema":1}""", "without schema or entry")]
    [InlineData("""{"schema":1,"entry":{"type":"round ended","id":"a","person":"b","at":"2026-03-02T08:00:00-06:00"},"more":1}""", "something follows the entry")]
    [InlineData("""{"schema":2,"entry":{"type":"dream"}}""", "of schema 2, this program reads up to 1")]
    [InlineData("""{"schema":1,"entry":{"type":"dream"}}""", "not a journal event")]
    [InlineData("""{"schema":1,"entry":{"type":"round ended","id":"a","person":"b","at":"yesterday"}}""", "not a journal event")]
    public void What_is_no_event_is_refused_with_the_reason(string text, string reason) =>
        Should.Throw<InvalidDataException>(() => JournalEventCodec.Decode(Encoding.UTF8.GetBytes(text))).Message.ShouldContain(reason);
}
