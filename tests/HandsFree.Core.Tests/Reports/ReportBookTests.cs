using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Tests.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Reports;

public sealed class ReportBookTests
{
    private const string Opened = "2";

    private static Entries OneReport() => new Entries().Reading("pulse 136").Report(VitalSign.Pulse, "1");

    [Fact]
    public void A_report_goes_from_open_to_told_to_acknowledged_to_closed()
    {
        Entries entries = OneReport();
        StateOf(entries).ShouldBe(ReportState.Open);
        StateOf(entries.Told(Opened)).ShouldBe(ReportState.Told);
        StateOf(entries.Acknowledged(Opened)).ShouldBe(ReportState.Acknowledged);
        StateOf(entries.Closed(Opened)).ShouldBe(ReportState.Closed);
    }

    [Fact]
    public void Family_and_prescriber_told_is_kept_and_tells_no_nurse()
    {
        Report report = Only(OneReport().Told(Opened, Told.Family).Told(Opened, Told.Prescriber));

        report.State.ShouldBe(ReportState.Open);
        report.Told.Select(t => t.Whom).ShouldBe([Told.Family, Told.Prescriber]);
        report.NurseTold.ShouldBeNull();
    }

    [Fact]
    public void An_acknowledgement_without_told_is_enough_and_the_first_one_stands()
    {
        Entries entries = OneReport().Acknowledged(Opened).Acknowledged(Opened);

        Only(entries).Acknowledged.ShouldBe(entries.All.OfType<ReportAcknowledged>().First());
    }

    [Fact]
    public void A_report_that_was_undone_is_none_and_told_in_error_is_not_told()
    {
        ReportBook.Of(OneReport().InError(Opened).All).All.ShouldBeEmpty();
        StateOf(OneReport().Told(Opened).InError("3")).ShouldBe(ReportState.Open);
        Only(OneReport().Acknowledged(Opened).Plan(Opened, LimitedValue.Pulse, 50, 115, 4).InError("4")).Plans.ShouldBeEmpty();
    }

    [Fact]
    public void What_names_a_report_that_is_not_here_changes_nothing() =>
        StateOf(OneReport().Told("99").Acknowledged("98").Closed("97")).ShouldBe(ReportState.Open);

    [Fact]
    public void Added_event_by_event_it_is_what_it_is_made_at_once()
    {
        Entries entries = OneReport().Told(Opened).Acknowledged(Opened).Plan(Opened, LimitedValue.Pulse, 50, 115, 4).Closed(Opened);
        ReportBook book = new();
        foreach (JournalEvent happened in entries.All)
        {
            book.Add(happened);
        }

        Report grown = book.All.ShouldHaveSingleItem();
        Report made = Only(entries);
        (grown.State, grown.Acknowledged, grown.Closed).ShouldBe((made.State, made.Acknowledged, made.Closed));
        grown.Told.ShouldBe(made.Told);
        grown.Plans.ShouldBe(made.Plans);
    }

    [Fact]
    public void It_is_overdue_after_the_home_s_time_and_told_does_not_change_that()
    {
        Overdue limits = new(TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(60), TimeSpan.FromMinutes(30));
        Report told = Only(OneReport().Told(Opened));

        told.IsOverdue(limits, told.At.AddMinutes(60)).ShouldBeFalse();
        told.IsOverdue(limits, told.At.AddMinutes(61)).ShouldBeTrue();
        Only(OneReport().Acknowledged(Opened)).IsOverdue(limits, told.At.AddDays(1)).ShouldBeFalse();
    }

    private static ReportState StateOf(Entries entries) => Only(entries).State;

    private static Report Only(Entries entries) => ReportBook.Of(entries.All).All.ShouldHaveSingleItem();
}
