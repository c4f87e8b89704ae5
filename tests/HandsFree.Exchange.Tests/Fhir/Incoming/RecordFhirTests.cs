using System.Text;
using FsCheck.Xunit;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Incoming;
using Hl7.Fhir.Model;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir.Incoming;

public sealed class RecordFhirTests
{
    private static readonly RecordFhir Reader = new(Outgoing.Systems.Residents, id => id is "r1" or "r2", Made.Chicago);

    [Property(Arbitrary = [typeof(AnyReading)], MaxTest = 50)]
    public void What_this_program_sends_it_can_read(Reading[] readings)
    {
        Reading[] said = [.. readings.Where(r => !r.How.Observed)];
        foreach (bool newPatients in new[] { true, false })
        {
            foreach (var bundle in Outgoing.Bundles([.. said.Select((r, i) => Made.Recorded($"e-{i}", r, Made.At.AddMinutes(i)))], newPatients))
            {
                IncomingRecord record = Reader.Read("sent.json", FhirText.Bytes(bundle.Bundle));
                record.Errors.ShouldBeEmpty();
                record.LeftOut.ShouldBeEmpty();
                record.Readings.Select(r => (r.Resident, r.At, r.Reading.Value)).ShouldBe(said.Select((r, i) => ("r1", Made.At.AddMinutes(i), r.Value)));
            }
        }
    }

    [Fact]
    public void What_counts_no_more_or_was_not_taken_is_left_out_and_named()
    {
        Bundle bundle = new()
        {
            Type = Hl7.Fhir.Model.Bundle.BundleType.Collection,
            Entry = [.. Outgoing.Resources([.. Shapes.All["in error"], Made.NotTaken("x", Core.Quantities.VitalSign.Weight, Core.Meanings.NotTakenReason.Refused)]).Select(r => new Hl7.Fhir.Model.Bundle.EntryComponent { Resource = r })],
        };
        IncomingRecord record = Reader.Read("f.json", FhirText.Bytes(bundle));
        record.Readings.ShouldBeEmpty();
        record.LeftOut.ShouldBe(["line 1, Observation/2: its status is enteredinerror, so it is no value that stands", "line 1, Observation/5: it says why there is no value"]);
    }

    [Fact]
    public void Somebody_else_s_reading_is_left_out_also_where_only_the_system_differs()
    {
        Observation strange = Observation("r9", Outgoing.Systems.Residents);
        Observation same = Observation("r1", "urn:another-home");
        IncomingRecord record = Reader.Read("f.json", FhirText.Bytes(Bundle(strange, same)));
        record.Readings.ShouldBeEmpty();
        record.LeftOut.Count.ShouldBe(2);
        record.LeftOut.ShouldAllBe(l => l.Contains("is of nobody on the roster", StringComparison.Ordinal));
    }

    [Fact]
    public void A_goal_with_a_range_is_a_limit()
    {
        Goal goal = Goal("59408-5", new Hl7.Fhir.Model.Range { Low = Percent(88), High = Percent(92) });
        R4Validator.Profiles(goal).ShouldBeEmpty();
        IncomingLimit limit = Reader.Read("f.json", FhirText.Bytes(Bundle(goal))).Limits.ShouldHaveSingleItem();
        limit.ShouldBe(new IncomingLimit("r1", new OrderedLimit(LimitedValue.OxygenSaturation, 88, 92, "Dr Example", new(2026, 2, 1)), "Goal/g"));
    }

    [Fact]
    public void At_most_and_at_least_are_one_side_and_units_are_converted()
    {
        Quantity heavy = new(82, "kg", "http://unitsofmeasure.org") { Comparator = Quantity.QuantityComparator.LessOrEqual };
        Quantity slow = new(45, "/min", "http://unitsofmeasure.org") { Comparator = Quantity.QuantityComparator.GreaterOrEqual };
        OrderedLimit[] limits = [.. Reader.Read("f.json", FhirText.Bytes(Bundle(Goal("29463-7", heavy), Goal("8867-4", slow)))).Limits.Select(l => l.Limit)];
        (limits[0].Least, decimal.Round(limits[0].Greatest!.Value, 2)).ShouldBe((null, 180.78m)); // 82 kg / 0.45359237
        (limits[1].Least, limits[1].Greatest).ShouldBe((45, null));
    }

    [Theory]
    [InlineData("who")]
    [InlineData("day")]
    [InlineData("status")]
    [InlineData("unit")]
    [InlineData("equal")]
    [InlineData("steering")]
    public void A_goal_that_does_not_say_all_is_left_out(string what)
    {
        Goal goal = Goal("59408-5", new Hl7.Fhir.Model.Range { Low = Percent(88), High = Percent(92) });
        switch (what)
        {
            case "who": goal.ExpressedBy = null; break;
            case "day": goal.Start = new Date("2026-02"); break;
            case "status": goal.LifecycleStatus = Hl7.Fhir.Model.Goal.GoalLifecycleStatus.Proposed; break;
            case "unit": ((Hl7.Fhir.Model.Range)goal.Target[0].Detail!).High!.Code = "kPa"; ((Hl7.Fhir.Model.Range)goal.Target[0].Detail!).Low!.Code = "kPa"; break;
            case "equal": goal.Target[0].Detail = Percent(90); break;
            default: goal.ExpressedBy!.Display = "Dr \u202Eelpmaxe"; break;
        }

        IncomingRecord record = Reader.Read("f.json", FhirText.Bytes(Bundle(goal)));
        record.Limits.ShouldBeEmpty();
        record.LeftOut.ShouldHaveSingleItem().ShouldStartWith("line 1, Goal/g: ");
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{\"resourceType\":\"Patient\"}")]
    [InlineData("{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[{\"resource\":{\"resourceType\":\"Observation\",\"statu\":\"final\"}}]}")]
    [InlineData("<html>")]
    [InlineData("")]
    public void What_is_no_bundle_is_refused(string content)
    {
        IncomingRecord record = Reader.Read("f.json", Encoding.UTF8.GetBytes(content));
        record.Errors.ShouldNotBeEmpty();
        (record.Readings.Count, record.Limits.Count).ShouldBe((0, 0));
    }

    private static Bundle Bundle(params Resource[] resources) => new() { Type = Hl7.Fhir.Model.Bundle.BundleType.Collection, Entry = [.. resources.Select(r => new Hl7.Fhir.Model.Bundle.EntryComponent { Resource = r })] };

    private static Observation Observation(string resident, string system)
    {
        Observation observation = ExampleTests.Example("observation-example-heart-rate");
        observation.Subject = new ResourceReference { Identifier = new Identifier(system, resident) };
        return observation;
    }

    private static Quantity Percent(decimal value) => new() { Value = value, Unit = "%", System = "http://unitsofmeasure.org", Code = "%" };

    private static Goal Goal(string code, DataType detail) => new()
    {
        Id = "g",
        LifecycleStatus = Hl7.Fhir.Model.Goal.GoalLifecycleStatus.Active,
        Description = new CodeableConcept { Text = "Saturation on oxygen" },
        Subject = new ResourceReference { Identifier = new Identifier(Outgoing.Systems.Residents, "r1") },
        Start = new Date("2026-02-01"),
        ExpressedBy = new ResourceReference { Display = "Dr Example" },
        Target = [new() { Measure = new CodeableConcept("http://loinc.org", code), Detail = detail, Due = new Date("2026-12-31") }],
    };
}
