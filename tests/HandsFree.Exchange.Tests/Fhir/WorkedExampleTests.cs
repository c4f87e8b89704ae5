using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Observations;
using Hl7.Fhir.Model;
using Quantity = Hl7.Fhir.Model.Quantity;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>The worked examples F-01 to F-16 of the clinical rules. Their codes are HL7's (FHIR R4 vital signs; profiles read as R4B 4.3.0 and
/// R4 4.0.1 value sets; SNOMED CT as in Vital Signs with Qualifying Elements). What R4's own definitions say differently is said beside.</summary>
public sealed class WorkedExampleTests
{
    // The example says "radial". At the bedside nobody is asked where a pulse was felt, so no site is written; one that others write is no hindrance.
    [Fact]
    public void F_01_a_counted_pulse()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Pulse(72, new() { Counted = 72, CountedSeconds = 60 })));
        (o.Status, Code(o)).ShouldBe((ObservationStatus.Final, "8867-4"));
        Value(o).ShouldBe((72, "/min"));
        o.Method!.Coding[0].Code.ShouldBe("113011001");
        o.BodySite.ShouldBeNull();
        o.BodySite = new CodeableConcept(FhirSystems.Snomed, "45631007");
        R4Validator.Profiles(o).ShouldBeEmpty();
        ObservationReader.Of(o, Made.Chicago).Read!.Reading.Value.ShouldBe(HeartRate.FromPerMinute(72));
    }

    [Fact]
    public void F_02_a_temperature_is_not_converted()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Reading(BodyTemperature.FromFahrenheit(99.4m), new() { Site = TemperatureSite.Mouth })));
        (o.Status, Code(o), o.BodySite!.Coding[0].Code).ShouldBe((ObservationStatus.Final, "8310-5", "74262004"));
        Value(o).ShouldBe((99.4m, "[degF]"));
    }

    // An aneroid device is not said at the bedside, so none is written.
    [Fact]
    public void F_03_a_pressure_is_one_Observation_with_two_components()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Pressure(128, 76, new() { Arm = Arm.Left, Position = BodyPosition.Sitting })));
        Code(o).ShouldBe("85354-9");
        o.Value.ShouldBeNull();
        o.Component.Select(c => (c.Code!.Coding[0].Code, ((Quantity)c.Value!).Value, ((Quantity)c.Value).Code))
            .ShouldBe([("8480-6", 128, "mm[Hg]"), ("8462-4", 76, "mm[Hg]")]);
        ((CodeableConcept)o.Extension.Single().Value!).Coding[0].Code.ShouldBe("33586001");
        o.BodySite!.Coding[0].Code.ShouldBe("368208006");
    }

    // Our record keeps both numbers or none; from others it is valid, and no reading of ours.
    [Fact]
    public void F_04_a_pressure_without_its_lower_number_is_valid_and_no_reading_of_ours()
    {
        Observation o = HalfPressure();
        R4Validator.All(o).ShouldBeEmpty();
        ObservationReader.Of(o, Made.Chicago).Not.ShouldBe("it does not have both numbers of a blood pressure in mm[Hg]");
    }

    [Fact]
    public void F_05_a_component_with_neither_value_nor_reason_is_invalid()
    {
        Observation o = HalfPressure();
        o.Component[1].DataAbsentReason = null;
        R4Validator.Profiles(o).ShouldContain(e => e.Contains("vs-3", StringComparison.Ordinal));
    }

    // The example has 3151-8 = 2 L/min as a Quantity, as a national profile wants it. R4's own profile binds every component's unit to a list
    // without L/min: the flow is text here, and a Quantity from others is read.
    [Fact]
    public void F_06_a_saturation_on_oxygen()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Reading(OxygenSaturation.FromPercent(95), new() { Oxygen = new(2) })));
        o.Code!.Coding.Select(c => c.Code).ShouldBe(["2708-6", "59408-5"]);
        Value(o).ShouldBe((95, "%"));
        o.Component.Single().Code!.Coding[0].Code.ShouldBe("3151-8");
        o.Component[0].DataAbsentReason!.Text.ShouldBe("2 L/min");
        ObservationReader.Of(o, Made.Chicago).Read!.Reading.How.Oxygen.ShouldBe(new OxygenSupply(2));

        o.Component[0].DataAbsentReason = null;
        o.Component[0].Value = new Quantity(2, "L/min", FhirSystems.Ucum);
        R4Validator.Profiles(o).ShouldContain(e => e.Contains("L/min", StringComparison.Ordinal));
        ObservationReader.Of(o, Made.Chicago).Read!.Reading.How.Oxygen.ShouldBe(new OxygenSupply(2));
    }

    [Fact]
    public void F_07_a_saturation_with_59408_5_alone_fails_the_profile_and_passes_the_base()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Reading(OxygenSaturation.FromPercent(95))));
        o.Code!.Coding.RemoveAt(0);
        R4Validator.Profiles(o).ShouldNotBeEmpty();
        o.Meta = null;
        R4Validator.Profiles(o).ShouldBeEmpty();
        ObservationReader.Of(o, Made.Chicago).Read!.Reading.Value.ShouldBe(OxygenSaturation.FromPercent(95));
    }

    [Fact]
    public void F_08_a_weight_that_was_refused()
    {
        Observation o = Outgoing.Observation(Made.NotTaken("a", VitalSign.Weight, NotTakenReason.Refused));
        (o.Status, Code(o), o.DataAbsentReason!.Coding[0].Code).ShouldBe((ObservationStatus.Final, "29463-7", "asked-declined"));
        o.Value.ShouldBeNull();
    }

    [Fact]
    public void F_09_a_weight_in_pounds()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Reading(BodyWeight.FromPounds(154.3m))));
        Code(o).ShouldBe("29463-7");
        Value(o).ShouldBe((154.3m, "[lb_av]"));
    }

    [Fact]
    public void F_10_a_value_and_a_reason_for_its_absence_are_invalid() =>
        Invalid(Made.Pulse(72), o => o.DataAbsentReason = new(FhirSystems.Absent, "unknown"), "obs-6");

    [Fact]
    public void F_11_a_unit_called_bpm_is_invalid()
    {
        Observation o = Invalid(Made.Pulse(72), o => ((Quantity)o.Value!).Code = "bpm", "bpm");
        CodeCheck.Of(o).ShouldNotBeEmpty();
        ObservationReader.Of(o, Made.Chicago).Not.ShouldBe("its unit is \"bpm\"; UCUM's /min is needed");
    }

    [Fact]
    public void F_12_degF_without_brackets_is_invalid()
    {
        Observation o = Invalid(Made.Reading(BodyTemperature.FromFahrenheit(99.4m)), o => ((Quantity)o.Value!).Code = "degF", "degF");
        CodeCheck.Of(o).ShouldNotBeEmpty();
        ObservationReader.Of(o, Made.Chicago).Not.ShouldBe("its unit is \"degF\"; UCUM's Cel or [degF] is needed");
    }

    // HL7's own test tools take R4.0.1's formula of vs-1 for faulty; it is our own reader that refuses a time that is not exact to the day.
    [Fact]
    public void F_13_a_time_that_is_not_exact_to_the_day_is_refused()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Pulse(72)));
        o.Effective = new FhirDateTime("2025-03");
        ObservationReader.Of(o, Made.Chicago).Not.ShouldBe("effective names no day; year, month and day at least are needed");
    }

    [Fact]
    public void F_14_a_pulse_that_was_mis_heard()
    {
        Resource[] all = Outgoing.Resources(
            Made.Recorded("a", Made.Pulse(27)), Made.Recorded("b", Made.Pulse(72), amends: "a"),
            new ReadingAmended("n", "nurse-1", Made.At.AddMinutes(20), "r1", AmendmentKind.CorrectedValue, "a", "b", null, "mis-heard"));
        Observation o = all.OfType<Observation>().ShouldHaveSingleItem();
        o.Status.ShouldBe(ObservationStatus.Corrected);
        Value(o).ShouldBe((72, "/min"));
        Provenance change = all.OfType<Provenance>().Single(p => p.Activity!.Coding[0].Code == "UPDATE");
        change.Reason.Single().Text.ShouldBe("mis-heard");
        change.Agent[0].Who!.Identifier!.Value.ShouldBe("aide-7");
        change.Recorded.ShouldNotBeNull();
        change.Entity.Single().Role.ShouldBe(Provenance.ProvenanceEntityRole.Revision);
        change.Entity.Single().What!.Display!.ShouldContain("pulse, two seven");
    }

    [Fact]
    public void F_15_a_reading_filed_under_another_resident()
    {
        Observation[] all = [.. Outgoing.Resources(Shapes.All["of another resident"]).OfType<Observation>()];
        all.Select(o => (o.Status, o.Subject!.Identifier!.Value)).ShouldBe([(ObservationStatus.EnteredInError, "r1"), (ObservationStatus.Final, "r2")]);
        all[0].Identifier[0].Value.ShouldNotBe(all[1].Identifier[0].Value);
    }

    [Fact]
    public void F_16_a_panel_with_members_and_no_value_is_valid()
    {
        Observation panel = ObservationWriter.Absent(null, new CodeableConcept());
        panel.DataAbsentReason = null;
        panel.Subject = new ResourceReference("Patient/example");
        panel.Effective = new FhirDateTime("2026-03-03T08:05:30-06:00");
        R4Validator.Profiles(panel).ShouldContain(e => e.Contains("vs-2", StringComparison.Ordinal));
        panel.HasMember.AddRange(Enumerable.Range(1, 4).Select(i => new ResourceReference($"Observation/{i}")));
        R4Validator.All(panel).ShouldBeEmpty();
    }

    private static Observation HalfPressure()
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", Made.Pressure(110, 70)));
        o.Interpretation.Clear();
        o.Component[1] = new() { Code = o.Component[1].Code, DataAbsentReason = new(FhirSystems.Absent, "not-performed", "Not Performed", null) };
        o.Method = new CodeableConcept(FhirSystems.Snomed, "113011001", "Palpation", null);
        return o;
    }

    private static Observation Invalid(Reading reading, Action<Observation> breaks, string words)
    {
        Observation o = Outgoing.Observation(Made.Recorded("a", reading));
        breaks(o);
        R4Validator.Profiles(o).ShouldContain(e => e.Contains(words, StringComparison.Ordinal));
        return o;
    }

    private static string? Code(Observation o) => o.Code!.Coding[0].Code;

    private static (decimal? Value, string? Code) Value(Observation o) => (((Quantity)o.Value!).Value, ((Quantity)o.Value).Code);
}
