using System.Text;
using FsCheck.Xunit;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Exchange.Readings;
using HandsFree.Exchange.Tables;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Tables;

public sealed class TableTests
{
    private static readonly JournalEvent[] Morning =
    [
        Made.Recorded("s-1", Made.Reading(BodyTemperature.FromFahrenheit(98.6m), new() { Site = TemperatureSite.Mouth, MinutesSinceFoodOrDrink = 20 })),
        Made.Recorded("s-2", Made.Pulse(136, new() { Uneven = true, Counted = 68, CountedSeconds = 30 }), Made.At.AddMinutes(1)),
        Made.Report("s-3", ReportUrgency.Now, "s-2"),
        Made.Recorded("s-4", Made.Pressure(128, 76, new() { Arm = Arm.Left, Position = BodyPosition.Sitting }), Made.At.AddMinutes(4)),
        Made.Recorded("s-5", Made.Reading(OxygenSaturation.FromPercent(95), new() { Oxygen = new(2), Delivery = OxygenDelivery.NasalCannula }), Made.At.AddMinutes(5)),
        Made.NotTaken("s-6", VitalSign.Weight, NotTakenReason.Refused),
        Made.Recorded("s-7", Made.Pressure(182, 76), Made.At.AddMinutes(6)),
        Made.Recorded("s-8", Made.Pressure(128, 76), Made.At.AddMinutes(6), amends: "s-7"),
        Made.Recorded("s-9", Made.Pulse(44), Made.At.AddMinutes(9), resident: "r2"),
        new EnteredInError("s-10", "aide-7", Made.At.AddMinutes(10), "r2", "s-9", "=wrong, \"resident\""),
        Made.Recorded("s-11", Made.Reading(BodyWeight.FromKilograms(70.5m)), Made.At.AddHours(-3), resident: "r2", late: true),
        new ReportTold("s-12", "aide-7", Made.At.AddMinutes(12), "s-3", Told.Nurse, "nurse-1", ToldHow.InPerson, Made.At.AddMinutes(11)),
        new ReportAcknowledged("s-13", "nurse-1", Made.At.AddMinutes(13), "s-3") { Advised = "=count again at noon" },
    ];

    private static readonly RecordPart Whole = new(Made.Numbered(Morning), Made.Chicago);

    [Fact]
    public void Readings_one_a_line() => Golden.Match(Text(stream => ReadingTable.Write(stream, Whole)));

    [Fact]
    public void Sets_one_a_line() => Golden.Match(Text(stream => SetTable.Write(stream, Whole)));

    [Fact]
    public void Reports_one_a_line() => Golden.Match(Text(stream => ReportTable.Write(stream, Whole)));

    [Fact]
    public void A_part_has_its_residents_and_its_time_alone()
    {
        Text(stream => ReadingTable.Write(stream, Whole with { Residents = new HashSet<string> { "r2" } })).Split('\n').Count(l => l.Contains("r1,", StringComparison.Ordinal)).ShouldBe(0);
        Text(stream => ReadingTable.Write(stream, Whole with { From = Made.At.AddMinutes(9) })).Trim().Split('\n').Length.ShouldBe(2);
    }

    [Fact]
    public void A_reading_outside_of_the_part_still_replaces_one_inside() =>
        Text(stream => ReadingTable.Write(stream, new(Made.Numbered(Made.Recorded("a", Made.Pulse(27)), Made.Recorded("b", Made.Pulse(72), Made.At.AddDays(-1), amends: "a")), Made.Chicago, null, Made.At)))
            .ShouldContain(",replaced,");

    [Fact]
    public void The_table_of_readings_is_read_without_what_counts_no_more()
    {
        (IReadOnlyList<PastSet> sets, var errors) = ReadingCsv.Read("t.csv", Bytes(stream => ReadingTable.Write(stream, Whole)), WeightUnit.Pounds, Made.Chicago);
        errors.ShouldBeEmpty();
        sets.Select(s => (s.Resident, s.At, s.Readings.Single())).ShouldBe(
            [.. PastReadings.Standing(Morning).Select(r => (r.Resident, r.Confirmed.By.MeasuredAt, r.Confirmed.Reading))]);
    }

    [Property(Arbitrary = [typeof(AnyReading)])]
    public void Any_readings_come_back_as_they_were(Reading[] readings)
    {
        ReadingRecorded[] recorded = [.. readings.Select((r, i) => Made.Recorded($"s-{i}", r, Made.At.AddSeconds(i)))];
        (IReadOnlyList<PastSet> sets, var errors) = ReadingCsv.Read(
            "t.csv", Bytes(stream => ReadingTable.Write(stream, new(Made.Numbered(recorded), Made.Chicago))), WeightUnit.Kilograms, Made.Chicago);
        errors.ShouldBeEmpty();
        sets.Select(s => (s.At, s.Readings.Single())).ShouldBe([.. recorded.Select(r => (r.Confirmed.By.MeasuredAt, r.Confirmed.Reading))]);
    }

    [Property(Arbitrary = [typeof(AnyReading)])]
    public void A_set_comes_back_with_all_its_values(Reading[] readings)
    {
        Reading[] one = [.. readings.DistinctBy(r => r.Value.Sign)];
        ReadingRecorded[] recorded = [.. one.Select((r, i) => Made.Recorded($"s-{i}", r, Made.At.AddSeconds(i)))];
        (IReadOnlyList<PastSet> sets, var errors) = ReadingCsv.Read(
            "t.csv", Bytes(stream => SetTable.Write(stream, new(Made.Numbered(recorded), Made.Chicago))), WeightUnit.Pounds, Made.Chicago);
        errors.ShouldBeEmpty();
        sets.SelectMany(s => s.Readings.Select(r => r.Value)).ShouldBe(one.Select(r => r.Value), ignoreOrder: true);
        sets.Count.ShouldBe(one.Length == 0 ? 0 : 1);
    }

    private static byte[] Bytes(Action<Stream> write)
    {
        using MemoryStream target = new();
        write(target);
        return target.ToArray();
    }

    private static string Text(Action<Stream> write) => Encoding.UTF8.GetString(Bytes(write)).TrimStart('\uFEFF');
}
