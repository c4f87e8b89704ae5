using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Tests.Dialogue;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Handover;

public sealed class HandoverTests
{
    private static readonly IReadOnlyList<JournalEvent> Shift = Talk.WithMary().Go(
        "pulse forty four", "four four", "forty six", "four six", "temperature ninety eight six by mouth", "yes", "next resident",
        "room twelve bed a", "yes", "october twenty fifth", "temperature one hundred one point two", "one zero one point two", "next resident",
        "room four", "yes", "january ninth", "pulse seventy two", "yes", "refused", "yes", "goodbye").Journal;

    private static readonly HandoverView View = HandoverView.From(Shift, TestHome.Roster, TestHome.Round);

    [Fact]
    public void Every_question_and_its_answer() => Golden.Match(string.Join('\n', Enum.GetValues<QueryKind>().Select(kind =>
        $"{kind}: {Ask(kind, kind == QueryKind.Room ? 12 : null).Text}")));

    [Fact]
    public void Exceptions_come_first_and_what_is_missing_is_listed() =>
        View.Entries.Select(e => e.Rank).ShouldBe(
            [HandoverRank.ReportNow, HandoverRank.ReportThisShift, HandoverRank.NotTaken, HandoverRank.NothingYet]);

    [Fact]
    public void Next_goes_through_the_list_and_says_when_it_is_over()
    {
        HandoverAnswer answer = Ask(QueryKind.Handover);
        var texts = new List<string>();
        for (int i = 0; i < 4; i++)
        {
            answer = HandoverAnswerer.Answer(View, new Meaning.Query(QueryKind.Next, null), answer.Cursor);
            texts.Add(answer.Text);
        }

        texts[2].ShouldStartWith("Room 7");
        texts[3].ShouldBe("That is all.");
        HandoverAnswerer.Answer(View, new Meaning.Query(QueryKind.Previous, null), answer.Cursor).Text.ShouldStartWith("Room 4");
    }

    [Fact]
    public void No_name_is_spoken() =>
        Enum.GetValues<QueryKind>().Select(k => Ask(k, k == QueryKind.Room ? 12 : null).Text)
            .ShouldAllBe(t => !t.Contains("Miller", StringComparison.Ordinal) && !t.Contains("Berg", StringComparison.Ordinal));

    [Fact]
    public void An_acknowledged_report_is_open_no_more()
    {
        ReportOpened[] reports = [.. Shift.OfType<ReportOpened>()];
        HandoverView later = HandoverView.From(
            [.. Shift, .. reports.Select((r, i) => new ReportAcknowledged($"n-{i}", "nurse-1", TestHome.Morning, r.Id))], TestHome.Roster, TestHome.Round);
        HandoverAnswerer.Answer(later, new Meaning.Query(QueryKind.OpenReports, null), HandoverCursor.Start).Text.ShouldBe("No open reports.");
    }

    [Fact]
    public void Of_an_earlier_shift_only_open_reports_stay()
    {
        HandoverView next = HandoverView.From(Shift, TestHome.Roster, TestHome.Round, TestHome.Morning.AddHours(8));
        next.Entries.Sum(e => e.Last.Count).ShouldBe(0);
        next.Entries.Sum(e => e.Reports.Count).ShouldBe(2);
    }

    [Fact]
    public void A_reading_entered_in_error_counts_no_more()
    {
        ReadingRecorded gone = Shift.OfType<ReadingRecorded>().Last();
        HandoverView later = HandoverView.From(
            [.. Shift, new EnteredInError("x", "aide-1", TestHome.Morning, gone.Resident, gone.Id, "undo")], TestHome.Roster, TestHome.Round);
        later.Entries.Single(e => e.Resident.Id == gone.Resident).Last.ShouldBeEmpty();
    }

    private static HandoverAnswer Ask(QueryKind kind, int? room = null) =>
        HandoverAnswerer.Answer(View, new Meaning.Query(kind, room), HandoverCursor.Start);
}
