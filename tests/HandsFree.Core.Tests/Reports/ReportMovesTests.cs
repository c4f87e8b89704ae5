using HandsFree.Core.People;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Tests.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Reports;

/// <summary>Every move in every state by every role: allowed, or the reason.</summary>
public sealed class ReportMovesTests
{
    [Theory]
    [InlineData(ReportState.Open, "told", null, null)]
    [InlineData(ReportState.Open, "told", Role.Aide, null)]
    [InlineData(ReportState.Told, "told", Role.Aide, null)]
    [InlineData(ReportState.Acknowledged, "told", Role.Aide, "acknowledged by nurse-1")]
    [InlineData(ReportState.Closed, "told", Role.Nurse, "closed by nurse-1")]
    [InlineData(ReportState.Open, "family told", Role.Aide, "entered by a nurse")]
    [InlineData(ReportState.Open, "family told", null, "entered by a nurse")]
    [InlineData(ReportState.Acknowledged, "family told", Role.Nurse, null)]
    [InlineData(ReportState.Open, "acknowledged", Role.Nurse, null)]
    [InlineData(ReportState.Told, "acknowledged", Role.Supervisor, null)]
    [InlineData(ReportState.Told, "acknowledged", Role.Aide, "an aide can't")]
    [InlineData(ReportState.Told, "acknowledged", null, "nobody is set up")]
    [InlineData(ReportState.Acknowledged, "acknowledged", Role.Nurse, "acknowledged by nurse-1")]
    [InlineData(ReportState.Closed, "acknowledged", Role.Nurse, "closed by nurse-1")]
    [InlineData(ReportState.Open, "closed", Role.Nurse, "no nurse has acknowledged")]
    [InlineData(ReportState.Told, "closed", Role.Nurse, "no nurse has acknowledged")]
    [InlineData(ReportState.Acknowledged, "closed", Role.Nurse, null)]
    [InlineData(ReportState.Acknowledged, "closed", Role.Aide, "an aide can't")]
    [InlineData(ReportState.Closed, "closed", Role.Nurse, "closed by nurse-1")]
    [InlineData(ReportState.Open, "planned", Role.Nurse, "no nurse has acknowledged")]
    [InlineData(ReportState.Acknowledged, "planned", Role.Supervisor, null)]
    [InlineData(ReportState.Acknowledged, "planned", null, "nobody is set up")]
    [InlineData(ReportState.Closed, "planned", Role.Nurse, "closed by nurse-1")]
    public void A_move_is_allowed_or_refused_with_the_reason(ReportState state, string move, Role? role, string? reason)
    {
        string? why = move switch
        {
            "told" => ReportMoves.WhyNotTold(In(state), Told.Nurse, role),
            "family told" => ReportMoves.WhyNotTold(In(state), Told.Family, role),
            "acknowledged" => ReportMoves.WhyNotAcknowledged(In(state), role),
            "closed" => ReportMoves.WhyNotClosed(In(state), role),
            _ => ReportMoves.WhyNotPlanned(In(state), role),
        };

        if (reason is null)
        {
            why.ShouldBeNull();
        }
        else
        {
            why.ShouldNotBeNull().ShouldContain(reason);
        }
    }

    private static Report In(ReportState state)
    {
        Entries entries = new Entries().Reading("pulse 136").Report(VitalSign.Pulse, "1");
        entries = state >= ReportState.Told ? entries.Told("2") : entries;
        entries = state >= ReportState.Acknowledged ? entries.Acknowledged("2") : entries;
        entries = state >= ReportState.Closed ? entries.Closed("2") : entries;
        return ReportBook.Of(entries.All).All.Single();
    }
}
