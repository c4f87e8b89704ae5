using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Outgoing;
using Hl7.Fhir.Model;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>Every shape against HL7's R4 definitions and vital-signs profiles, and broken ones that must fail.</summary>
public sealed class ValidationTests
{
    public static IEnumerable<TheoryDataRow<string>> Names => Shapes.All.Keys.Select(name => new TheoryDataRow<string>(name));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_shape_is_valid(string name)
    {
        foreach (bool newPatients in new[] { true, false })
        {
            OutgoingBundle bundle = Outgoing.Bundles(Shapes.All[name], newPatients).ShouldHaveSingleItem();
            R4Validator.All(bundle.Bundle).ShouldBeEmpty();
            foreach (Resource resource in bundle.Bundle.Entry.Select(e => e.Resource!))
            {
                R4Validator.All(resource).ShouldBeEmpty(resource.TypeName);
            }
        }
    }

    [Fact]
    public void A_missing_category_is_found() => Broken(Pulse, o => o.Category.Clear());

    [Fact]
    public void A_missing_subject_is_found() => Broken(Pulse, o => o.Subject = null);

    [Fact]
    public void A_missing_time_is_found() => Broken(Pulse, o => o.Effective = null);

    [Fact]
    public void A_missing_number_of_a_pressure_is_found() => Broken(Pressure, o => o.Component.RemoveAt(1));

    [Fact]
    public void A_wrong_unit_is_found() => Broken(Pulse, o => ((Quantity)o.Value!).Code = "mm[Hg]");

    [Fact]
    public void A_value_beside_a_reason_for_its_absence_is_found() => Broken(Pulse, o => o.DataAbsentReason = new(FhirSystems.Absent, "unknown"));

    [Fact]
    public void A_code_that_is_not_there_is_found_by_our_table()
    {
        Observation pulse = Outgoing.Observation(Pulse);
        pulse.Code.Coding[0].Code = "8867-5";
        CodeCheck.Of(pulse).ShouldHaveSingleItem().ShouldContain("8867-5");
    }

    [Fact]
    public void A_wrong_name_of_a_code_is_found_by_our_table()
    {
        Observation pressure = Outgoing.Observation(Pressure);
        pressure.Component[0].Code.Coding[0].Display = "Diastolic blood pressure";
        CodeCheck.Of(pressure).ShouldHaveSingleItem().ShouldContain("Systolic");
    }

    [Fact]
    public void A_unit_that_is_not_there_is_found_by_our_table()
    {
        Observation pulse = Outgoing.Observation(Pulse);
        pulse.ReferenceRange[0].High!.Code = "beats";
        CodeCheck.Of(pulse).ShouldHaveSingleItem().ShouldContain("beats");
    }

    private static readonly Core.Journal.JournalEvent Pulse = Made.Recorded("a", Made.Pulse(72));
    private static readonly Core.Journal.JournalEvent Pressure = Made.Recorded("a", Made.Pressure(128, 76));

    private static void Broken(Core.Journal.JournalEvent recorded, Action<Observation> breaks)
    {
        Observation observation = Outgoing.Observation(recorded);
        R4Validator.Profiles(observation).ShouldBeEmpty();
        breaks(observation);
        R4Validator.Profiles(observation).ShouldNotBeEmpty();
    }
}
