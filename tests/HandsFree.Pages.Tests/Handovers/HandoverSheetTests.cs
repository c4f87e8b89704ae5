using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Handovers;
using Shouldly;
using Xunit;

namespace HandsFree.Pages.Tests.Handovers;

public sealed class HandoverSheetTests
{
    private static readonly UnitSheet Unit = InventedUnit.Handover().Units.ShouldHaveSingleItem();

    private static SheetItem Item(string section, string name) =>
        Unit.Sections.Single(s => s.Heading == section).Items.Single(i => i.Name == InventedUnit.Roster.ById(name)!.Name);

    private static ResidentBlock Block(string id) => Unit.Everyone.Single(b => b.Name == InventedUnit.Roster.ById(id)!.Name);

    private static SignCell Cell(string id, VitalSign sign) => Block(id).Cells.Single(c => c.Sign == sign);

    [Fact]
    public void The_exceptions_come_in_the_order_of_the_trade_and_then_everyone_by_room_and_bed()
    {
        Unit.Sections.Select(s => s.Heading).ShouldBe(
            ["Open reports", "Rechecks that wait", "Acknowledged, in a nurse's hand", "Outside limits, without an open report", "Not taken"]);
        Unit.Everyone.Select(b => b.Place).ShouldBe(
            ["Room 101 A", "Room 101 B", "Room 102 A", "Room 102 B", "Room 103 A", "Room 103 B", "Room 104 A", "Room 104 B", "Room 105 A", "Room 105 B"]);
        Unit.Sections[0].Items.Select(i => i.Mark).ShouldBe([Mark.ReportNow, Mark.ReportThisShift]);
        Unit.Summary.ShouldBe("10 residents · 1 report now · 1 report this shift · 1 recheck waits · 1 report acknowledged · 2 with something missing · 7 not complete · 1 not visited · 1 away");
    }

    [Fact]
    public void A_report_names_both_readings_with_times_who_was_told_and_that_it_is_overdue()
    {
        SheetItem report = Item("Open reports", "1000");

        report.When.ShouldBe("since 08:06, OVERDUE");
        report.Lines[0].ShouldBe("Pulse 136 /min at 08:02 (counted 68 in 30 s), then 134 /min at 08:05 (uneven, counted 134 in 60 s, recheck)");
        report.Lines[1].ShouldBe("Very fast pulse: pulse 134 /min, above 130 /min");
        report.Lines[2].ShouldBe("Nurse told at 08:08 (nurse-invented), in person");
        report.WriteIn.ShouldBe(["Acknowledged by", "at", "advised"]);
        Item("Open reports", "1001").WriteIn[0].ShouldBe("Nurse told");
    }

    [Fact]
    public void A_plan_stands_with_what_was_advised_and_replaces_the_limit_in_the_trend()
    {
        SheetItem known = Item("Acknowledged, in a nurse's hand", "1005");

        known.Mark.ShouldBe(Mark.Acknowledged);
        known.Lines.ShouldContain("Acknowledged by nurse-invented at 09:05, advised: oxygen at 2 litres, measure each hour");
        known.Lines.ShouldContain("Plan: oxygen 86 or more until 19:00. Tell me at once below 86.");
        Cell("1005", VitalSign.OxygenSaturation).Trend.Low.ShouldBe(86);
        Cell("1005", VitalSign.OxygenSaturation).Mark.ShouldBeNull();
    }

    [Fact]
    public void What_a_rule_speaks_of_although_it_lies_between_its_limits_is_neither_high_nor_low()
    {
        SheetItem more = Item("Outside limits, without an open report", "1001");

        more.Mark.ShouldBe(Mark.Outside);
        more.Lines[1].ShouldStartWith("More oxygen than ordered or usual");
    }

    [Fact]
    public void What_waits_and_what_is_missing_stands_with_its_reason()
    {
        Item("Rechecks that wait", "1002").Lines.ShouldBe(
            ["Blood pressure 192/88 mmHg at 08:31 (right arm, machine)", "Let the resident rest five minutes, then measure again."]);
        Item("Not taken", "1003").Lines.ShouldBe(["Blood pressure: refused"]);
        Item("Not taken", "1004").Mark.ShouldBe(Mark.LeftOpen);
        Unit.Sections[^1].Items[^2].ShouldSatisfyAllConditions(
            i => i.Mark.ShouldBe(Mark.NotComplete),
            i => i.Place.ShouldBe("7 residents"),
            i => i.Lines.Count.ShouldBe(7),
            i => i.Lines.ShouldContain($"Room 103 A {InventedUnit.Roster.ById("1004")!.Name}: Temperature, pulse, blood pressure, oxygen saturation"),
            i => i.Lines.ShouldNotContain(line => line.Contains(InventedUnit.Roster.ById("1008")!.Name, StringComparison.Ordinal)));
        Unit.Sections[^1].Items[^1].ShouldSatisfyAllConditions(
            i => i.Mark.ShouldBe(Mark.NotVisited), i => i.Place.ShouldBe("1 resident"), i => i.Lines.ShouldBe([$"Room 104 A {InventedUnit.Roster.ById("1006")!.Name}"]));
        Item("Not taken", "1007").ShouldSatisfyAllConditions(i => i.Mark.ShouldBe(Mark.Away), i => i.Lines.ShouldBe(["hospital"]));
    }

    [Fact]
    public void A_cell_has_the_last_value_of_this_shift_or_an_older_one_with_its_day()
    {
        Cell("1001", VitalSign.Temperature).ShouldSatisfyAllConditions(
            c => c.Value.ShouldBe("100.6"), c => c.When.ShouldBe("08:15"), c => c.How.ShouldBe("ear"), c => c.Mark.ShouldBe(Mark.High), c => c.IsOld.ShouldBeFalse());
        Cell("1006", VitalSign.Temperature).ShouldSatisfyAllConditions(
            c => c.Value.ShouldNotBeNull(), c => c.When.ShouldBe("25 Nov"), c => c.IsOld.ShouldBeTrue());
        Cell("1001", VitalSign.OxygenSaturation).When.ShouldBe("~08:25"); // a late entry
        Cell("1001", VitalSign.BloodPressure).Usual!.ShouldMatch(@"^\d+–\d+/\d+–\d+$");
    }

    [Fact]
    public void A_trend_has_every_reading_of_fourteen_days_with_its_kind()
    {
        var trend = Cell("1001", VitalSign.Temperature).Trend;

        (trend.Until - trend.From).ShouldBe(TimeSpan.FromDays(14));
        trend.Points.Count(p => p.Kind == Charts.PointKind.CountsNoMore).ShouldBe(1);
        trend.Points.Single(p => p.Kind == Charts.PointKind.CountsNoMore).CorrectedTo.ShouldBe(100.6);
        trend.Points.Count.ShouldBe(InventedUnit.Journal.OfType<ReadingRecorded>().Count(
            r => r.Resident == "1001" && r.Confirmed.Reading.Value is BodyTemperature && r.Confirmed.By.MeasuredAt > trend.From));
        trend.High.ShouldBe(100);
        trend.Low.ShouldBe(95);
    }

    [Fact]
    public void Who_left_the_roster_with_an_open_report_is_on_the_sheet_of_every_unit()
    {
        Roster without = new([.. InventedUnit.Roster.Residents.Where(r => r.Id != "1000")]);

        HandoverSheet sheet = HandoverSheet.Of(InventedUnit.Facts(), InventedUnit.Journal, without, InventedUnit.Rules, "birch");

        sheet.Units.Select(u => u.Unit).ShouldBe(["Birch", null]);
        sheet.Units[1].Sections[0].Items.ShouldHaveSingleItem().Place.ShouldBe("Not on the roster");
        sheet.Units[1].Sections[0].Items[0].Lines[0].ShouldStartWith("Pulse 136 /min");
    }

    [Fact]
    public void Without_names_no_name_is_on_it()
    {
        HandoverSheet sheet = HandoverSheet.Of(InventedUnit.Facts() with { WithNames = false }, InventedUnit.Journal, InventedUnit.Roster, InventedUnit.Rules);
        string html = HandoverHtml.Write(sheet, Paper.A4);

        InventedUnit.Roster.Residents.ShouldAllBe(r => !html.Contains(r.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_record_makes_a_sheet_on_which_nobody_was_visited()
    {
        UnitSheet empty = HandoverSheet.Of(InventedUnit.Facts(), [], InventedUnit.Roster, InventedUnit.Rules).Units.ShouldHaveSingleItem();

        empty.Summary.ShouldBe("10 residents · 9 not visited · 1 away");
        empty.Everyone.SelectMany(b => b.Cells).ShouldAllBe(c => c.Value == null && c.Trend.Points.Count == 0);
        Should.NotThrow(() => HandoverPdf.Write(HandoverSheet.Of(InventedUnit.Facts(), [], InventedUnit.Roster, InventedUnit.Rules), Paper.Letter));
    }

    [Fact]
    public void Celsius_and_kilograms_stand_in_the_home_s_units()
    {
        SheetFacts facts = InventedUnit.Facts() with { Units = new RosterUnits(TemperatureUnit.Celsius, WeightUnit.Kilograms) };
        UnitSheet unit = HandoverSheet.Of(facts, InventedUnit.Journal, InventedUnit.Roster, InventedUnit.Rules).Units.ShouldHaveSingleItem();
        SignCell cell = unit.Everyone[1].Cells[0];

        cell.Value.ShouldBe("100.6 °F"); // as it was spoken
        cell.Trend.High.ShouldBe(37.8); // 100 °F
        cell.Trend.Points[^1].Value.ShouldBe(38.1); // 100.6 °F is 38.11 °C
    }

    [Fact]
    public void A_name_that_means_something_in_html_is_text()
    {
        Roster odd = new([InventedUnit.Roster.Residents[0] with { Name = "<script>alert(1)</script> & \"O'Neil\"" }]);
        string html = HandoverHtml.Write(HandoverSheet.Of(InventedUnit.Facts(), InventedUnit.Journal, odd, InventedUnit.Rules), Paper.A4);

        html.ShouldNotContain("<script");
        html.ShouldContain("&lt;script&gt;");
    }
}
