using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Dialogue;
using HandsFree.Core.Tests.Rules;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Reports;

public sealed class ReportSheetTests
{
    private static readonly IRulebook Rules = Rulebook.Load().Rulebook.ShouldNotBeNull();
    private static readonly ShiftClock Clock = new(TimeZoneInfo.FindSystemTimeZoneById("America/Chicago"), [new(7, 0), new(15, 0), new(23, 0)]);

    [Fact]
    public void The_sheet_of_a_report_through_its_life()
    {
        Talk talk = Talk.WithMary(rules: Rules).Go(
            "temperature ninety eight six by mouth", "yes", "oxygen ninety seven on room air", "yes", "pulse one thirty four", "one three four",
            "one thirty six", "one three six", "next resident");
        ReportOpened opened = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        DateTimeOffset at = opened.At;
        JournalEvent[] later =
        [
            new ReportTold("d-1", "aide-1", at.AddMinutes(3), opened.Id, Told.Nurse, "nurse-1", ToldHow.InPerson, at.AddMinutes(2)),
            new ReportAcknowledged("d-2", "nurse-1", at.AddMinutes(20), opened.Id) { Advised = "count again in one hour" },
            new PlanMade("d-3", "nurse-1", at.AddMinutes(21), opened.Resident, opened.Id, LimitedValue.Pulse, 50, 140, at.AddHours(6), "rest in bed"),
            new ReportTold("d-4", "nurse-1", at.AddMinutes(30), opened.Id, Told.Prescriber, null, ToldHow.ByPhone, at.AddMinutes(25)),
            new ReportClosed("d-5", "nurse-1", at.AddHours(7), opened.Id, "pulse 88, as usual"),
        ];

        Golden.Match($"{Sheet(talk.Journal, at.AddMinutes(16))}\n\n=== after it was closed\n\n{Sheet([.. talk.Journal, .. later], at.AddHours(8))}");
    }

    [Fact]
    public void A_worry_is_a_report_without_a_number()
    {
        Talk talk = Talk.WithMary(rules: Rules).Go("i'm worried about her", "yes", "next resident");

        string sheet = Sheet(talk.Journal, TestHome.Morning.AddMinutes(5));

        sheet.ShouldContain("Report this shift: the aide is worried");
        sheet.ShouldContain("Assessment\n  Left for the nurse.");
        sheet.ShouldContain("Recommendation\n  Left for the nurse.");
    }

    /// <summary>Clinical rules, worked example E-12, the text of a report for E-09: situation "Room 12, breathing 2 6, oxygen 9 2 on air,
    /// temperature 9 9 point 6 mouth", background "usual oxygen 9 6, temperature 9 7 point 2". On paper the figures are not parted. "More sleepy
    /// since breakfast" is free text, which the round does not hear: a symptom that was asked for stands in the report's own words.</summary>
    [Fact]
    public void E_12_the_set_that_points_to_an_infection_is_in_the_situation_with_the_usual_values_behind()
    {
        Resident resident = Notation.Resident("usual temperature 97.2; usual oxygen 96");
        string[] set = ["temperature 99.6 F mouth", "oxygen 92 air", "respirations 26 counted 26 seconds 60"];
        Reading[] readings = [.. set.Select(Notation.Reading)];
        IReadOnlyList<Decision> decisions = Rules.Decide(readings, new DecisionContext(resident, [], 2, Notation.Now, new HashSet<string>()));
        JournalEvent[] journal =
        [
            .. readings.Select((reading, i) => Recorded($"s-{i}", reading, decisions[i], Notation.Now.AddMinutes(i))),
            new ReportOpened("s-9", "aide-1", Notation.Now.AddMinutes(3), resident.Id, ReportUrgency.Now, VitalSign.Respirations, ["s-2"],
                string.Join("; ", decisions[2].Reasons.Select(r => r.Text)), [.. decisions[2].Reasons.Select(r => r.Rule)]),
        ];

        ReportSheet sheet = new ReportSheets(journal, new Roster([resident]), Clock, Overdue.Default)
            .Of(ReportBook.Of(journal).All.Single(), Notation.Now.AddMinutes(4));

        decisions[2].Outcome.ShouldBe(Outcome.ReportNow);
        sheet.Place.ShouldBe("Room 12");
        string situation = string.Join('\n', sheet.Situation);
        situation.ShouldContain("respirations 26 /min");
        situation.ShouldContain("oxygen 92 %, on room air");
        situation.ShouldContain("temperature 99.6 °F, mouth");
        sheet.Background[0].ShouldContain("usual temperature 97.2");
        sheet.Background[0].ShouldContain("usual oxygen 96");
        sheet.Assessment.ShouldBe("Left for the nurse.");
        sheet.Recommendation.ShouldBe(["Left for the nurse."]);
    }

    /// <summary>Clinical rules, worked example E-01: pressure 214/96, repeated 212/94: report now, with both readings in it.</summary>
    [Fact]
    public void E_01_both_readings_are_in_the_report()
    {
        Talk talk = new Talk(rules: Rules, roster: TestHome.Roster).Go(
            "room twelve bed b", "yes", "march third", "was resting", "blood pressure two fourteen over ninety six", "two one four over nine six", "no",
            "(after 6 min)", "two twelve over ninety four", "two one two over nine four", "no", "next resident");

        ReportOpened opened = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        opened.Urgency.ShouldBe(ReportUrgency.Now);
        string sheet = Sheet(talk.Journal, opened.At.AddMinutes(1));
        sheet.ShouldContain("214/96 mmHg");
        sheet.ShouldContain("212/94 mmHg");
        sheet.ShouldContain("recheck asked");
    }

    private static string Sheet(IReadOnlyList<JournalEvent> journal, DateTimeOffset now)
    {
        ReportSheet sheet = new ReportSheets(journal, TestHome.Roster, Clock, Overdue.Default).Of(ReportBook.Of(journal).All.First(), now);
        return string.Join('\n',
        [
            $"{sheet.Place}. {sheet.Heading}. {sheet.Report.State}",
            "Situation", .. sheet.Situation.Select(Indented), "Background", .. sheet.Background.Select(Indented),
            "Assessment", Indented(sheet.Assessment), "Recommendation", .. sheet.Recommendation.Select(Indented), "Course", .. sheet.Course.Select(Indented),
        ]);
    }

    private static string Indented(string line) => "  " + line;

    private static ReadingRecorded Recorded(string id, Reading reading, Decision decision, DateTimeOffset at)
    {
        Heard heard = new("said", 0.9, null, null, null, Typed: false, at);
        Confirmed confirmed = ReadBack.Of(new Understood(heard, reading), "read back", at).ByYes(heard, new Attribution("aide-1", at, at));
        return new ReadingRecorded(id, "aide-1", at, "r1", confirmed, decision, IsRecheck: false, Amends: null);
    }
}
