using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.Simulation;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Simulated;

public sealed class SimulatedHomeTests
{
    private static readonly DateTimeOffset Until = new(2026, 11, 26, 10, 40, 0, TimeSpan.FromHours(-6));
    private static readonly Rulebook Rules = Rulebook.Load().Rulebook!;
    private static readonly Lazy<List<JournalEvent>> Sixty = new(() => [.. Home(24, 60).Events()]);

    private static SimulatedHome Home(int residents, int days, int seed = 1) =>
        new(new SimulationPlan(Until) { Residents = residents, Days = days, Seed = seed }, Rules);

    private static IEnumerable<ReadingRecorded> Of(VitalSign sign) =>
        Sixty.Value.OfType<ReadingRecorded>().Where(r => r.Confirmed.Reading.Value.Sign == sign);

    private static double Degrees(ReadingRecorded reading) => (double)((BodyTemperature)reading.Confirmed.Reading.Value).Fahrenheit;

    [Fact]
    public void The_same_seed_gives_the_same_record_byte_for_byte_and_another_another()
    {
        byte[][] first = [.. Home(4, 10).Events().Select(JournalEventCodec.Encode)];

        Home(4, 10).Events().Select(JournalEventCodec.Encode).ShouldBe(first);
        Home(4, 10, seed: 2).Events().Select(JournalEventCodec.Encode).ShouldNotBe(first);
    }

    [Fact]
    public void More_residents_change_nothing_in_those_that_were_there()
    {
        string[] few = [.. Home(4, 10).Roster.Residents.Select(r => $"{r.Id} {r.Name} {r.Room} {r.Born} {r.OrderedLimits.Count}")];

        Home(40, 10).Roster.Residents.Take(4).Select(r => $"{r.Id} {r.Name} {r.Room} {r.Born} {r.OrderedLimits.Count}").ShouldBe(few);
    }

    [Fact]
    public void Two_residents_share_neither_name_nor_place_and_the_home_says_that_it_is_invented()
    {
        var residents = Home(240, 1).Roster.Residents;

        residents.Select(r => r.Name).Distinct().Count().ShouldBeGreaterThan(170);
        residents.Select(r => (r.Room, r.Bed)).Distinct().Count().ShouldBe(240);
        Home(120, 1).Roster.Units.ShouldBe(["Birch", "Cedar", "Elm", "Maple"]);
        SimulatedHome.Name.ShouldContain("nobody here is real");
    }

    [Fact]
    public void Events_come_in_the_order_of_time_with_ids_of_their_own_and_end_with_the_plan()
    {
        Sixty.Value.Select(e => e.At).ShouldBeInOrder();
        Sixty.Value.Select(e => e.Id).ShouldBeUnique();
        Sixty.Value[^1].At.ShouldBeLessThanOrEqualTo(Until);
        Sixty.Value[0].At.ShouldBeLessThan(Until.AddDays(-58));
    }

    [Fact]
    public void What_names_an_event_names_one_that_was()
    {
        HashSet<string> ids = [.. Sixty.Value.Select(e => e.Id)];

        Sixty.Value.OfType<ReportAcknowledged>().Select(a => a.Report).ShouldBeSubsetOf(ids);
        Sixty.Value.OfType<RecheckAsked>().Select(r => r.Reading).ShouldBeSubsetOf(ids);
        Sixty.Value.OfType<ReportOpened>().SelectMany(r => r.Readings).ShouldBeSubsetOf(ids);
        Sixty.Value.OfType<ReadingAmended>().Count().ShouldBeGreaterThan(0);
    }

    // Mackowiak et al., JAMA 1992;268:1578-1580 (from memory): lowest at six in the morning, highest between four and six in the afternoon.
    [Fact]
    public void It_is_warmer_in_the_afternoon_than_before_dawn()
    {
        double[] dawn = [.. Of(VitalSign.Temperature).Where(r => r.At.Hour is 5 or 6).Select(Degrees)];
        double[] afternoon = [.. Of(VitalSign.Temperature).Where(r => r.At.Hour is >= 16 and <= 18).Select(Degrees)];

        dawn.Length.ShouldBeGreaterThan(30);
        (afternoon.Average() - dawn.Average()).ShouldBeInRange(0.3, 1.2);
    }

    [Fact]
    public void Illness_shows_fever_with_a_faster_pulse_and_the_nurse_is_told()
    {
        ILookup<(string, DateOnly), ReadingRecorded> pulses = Of(VitalSign.Pulse).ToLookup(r => (r.Resident, DateOnly.FromDateTime(r.At.DateTime)));
        double Pulse(ReadingRecorded r) =>
            pulses[(r.Resident, DateOnly.FromDateTime(r.At.DateTime))].Select(p => (double)((HeartRate)p.Confirmed.Reading.Value).PerMinute).DefaultIfEmpty(75).Average();
        ReadingRecorded[] feverish = [.. Of(VitalSign.Temperature).Where(r => Degrees(r) > 100)];

        feverish.Length.ShouldBeGreaterThan(10);
        feverish.ShouldAllBe(r => r.Decision.Outcome != Outcome.Accept);
        (feverish.Average(Pulse) - Of(VitalSign.Temperature).Where(r => Degrees(r) < 98.5).Average(Pulse)).ShouldBeGreaterThan(8);
    }

    [Fact]
    public void All_that_a_handover_must_name_happens()
    {
        Sixty.Value.OfType<ReportOpened>().ShouldNotBeEmpty();
        Sixty.Value.OfType<NotTakenRecorded>().ShouldNotBeEmpty();
        Sixty.Value.OfType<LeftOpen>().ShouldNotBeEmpty();
        Of(VitalSign.Weight).ShouldNotBeEmpty();
        Of(VitalSign.Pulse).ShouldContain(r => r.IsRecheck);
        Of(VitalSign.Pulse).Count(r => r.Decision.Outcome == Outcome.Accept).ShouldBeGreaterThan(Of(VitalSign.Pulse).Count() * 8 / 10);
    }
}
