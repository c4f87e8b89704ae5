using HandsFree.Core.Dialogue;
using HandsFree.Core.Observations;
using HandsFree.Exchange.Fhir.Observations;
using HandsFree.TestKit;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>HL7's example Observations (see README.md beside them), read as our readings and written again.</summary>
public sealed class ExampleTests
{
    [Theory]
    [InlineData("observation-example-heart-rate", "pulse 44", "1999-07-02T12:00:00-05:00")]
    [InlineData("observation-example-respiratory-rate", "respirations 26", "1999-07-02T12:00:00-05:00")]
    [InlineData("observation-example-body-temperature", "temperature 36.5 C", "1999-07-02T12:00:00-05:00")]
    [InlineData("observation-example-satO2", "oxygen saturation 95", "2014-12-05T09:30:10+01:00")]
    [InlineData("observation-example-bloodpressure", "107/60 Right", "2012-09-17T12:00:00-05:00")]
    [InlineData("observation-example", "weight 185 lb", "2016-03-28T12:00:00-05:00")]
    public void An_example_is_read_and_comes_back_with_its_facts(string name, string expected, string at)
    {
        Observation example = Example(name);
        R4Validator.Profiles(example).ShouldBeEmpty();

        (ReadObservation? read, string? not) = ObservationReader.Of(example, Made.Chicago);
        not.ShouldBeNull();
        Text(read!.Reading).ShouldBe(expected);
        read.At.ShouldBe(DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture));

        Observation back = ObservationWriter.Of(read.Reading);
        string[] codes = [.. back.Code!.Coding.Select(c => c.Code!)];
        codes.ShouldBeSubsetOf([.. example.Code!.Coding.Select(c => c.Code!)]);
        Same(back.Value, example.Value);
        back.Component.Count.ShouldBe(example.Component.Count);
        foreach ((Observation.ComponentComponent ours, Observation.ComponentComponent theirs) in back.Component.Zip(example.Component))
        {
            ours.Code!.Coding[0].Code.ShouldBe(theirs.Code!.Coding[0].Code);
            Same(ours.Value, theirs.Value);
        }

        back.BodySite?.Coding[0].Code.ShouldBe(example.BodySite?.Coding[0].Code);
    }

    [Theory]
    [InlineData("observation-example-bloodpressure-cancel", "its status is cancelled, so it is no value that stands")]
    [InlineData("observation-example-bloodpressure-dar", "it does not have both numbers of a blood pressure in mm[Hg]")]
    public void An_example_without_a_value_of_ours_is_no_reading_and_says_why(string name, string why)
    {
        Observation example = Example(name);
        R4Validator.Profiles(example).ShouldBeEmpty();
        ObservationReader.Of(example, Made.Chicago).ShouldBe((null, why));
    }

    internal static Observation Example(string name) => new FhirJsonDeserializer().Deserialize<Observation>(
        File.ReadAllText(Path.Combine(Shared.Repository, "tests", "HandsFree.Exchange.Tests", "Fhir", "Examples", $"{name}.json")));

    private static void Same(DataType? ours, DataType? theirs)
    {
        if (theirs is null)
        {
            ours.ShouldBeNull();
            return;
        }

        (((Quantity)ours!).Value, ((Quantity)ours).System, ((Quantity)ours).Code).ShouldBe((((Quantity)theirs).Value, ((Quantity)theirs).System, ((Quantity)theirs).Code));
    }

    private static string Text(Reading reading) => reading.Value switch
    {
        Core.Quantities.BloodPressure v => $"{v.Systolic}/{v.Diastolic} {reading.How.Arm}",
        Core.Quantities.HeartRate v => $"pulse {v.PerMinute}",
        Core.Quantities.RespiratoryRate v => $"respirations {v.PerMinute}",
        Core.Quantities.OxygenSaturation v => $"oxygen saturation {v.Percent}",
        Core.Quantities.BodyTemperature { Unit: Core.Quantities.TemperatureUnit.Celsius } v => FormattableString.Invariant($"temperature {v.Degrees} C"),
        Core.Quantities.BodyWeight { Unit: Core.Quantities.WeightUnit.Pounds } v => FormattableString.Invariant($"weight {v.Value} lb"),
        _ => ReadBackTexts.Of(reading),
    };
}
