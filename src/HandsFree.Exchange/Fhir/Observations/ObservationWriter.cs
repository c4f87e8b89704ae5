using System.Globalization;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;
using Quantity = Hl7.Fhir.Model.Quantity;

namespace HandsFree.Exchange.Fhir.Observations;

/// <summary>A reading as an Observation: code, value, and how it was taken; without whose it is and when.</summary>
/// <remarks>A value is written in the unit in which it was said. A pain that was observed, not said, has no LOINC code here: the one for pain
/// means what a person says. The flow of oxygen is a component whose value is there as text ("2 L/min", reason as-text), not as a Quantity: R4's
/// vital-signs profiles bind the unit of every component to a list that has no L/min, and a server that validates would refuse it.</remarks>
public static class ObservationWriter
{
    /// <summary>Makes the Observation; its status is final.</summary>
    public static Observation Of(Reading reading)
    {
        Observation observation = Blank(reading.Value.Sign, reading.How.Observed);
        Value(observation, reading.Value);
        How(observation, reading);
        return observation;
    }

    /// <summary>The Observation of a sign without a value.</summary>
    /// <param name="sign">Which; null for the panel of all.</param>
    /// <param name="reason">Why there is none.</param>
    public static Observation Absent(VitalSign? sign, CodeableConcept reason)
    {
        if (sign is null)
        {
            Observation panel = Vital("vitalsigns");
            panel.Code = Concepts.Loinc(VitalCodes.Panel);
            panel.DataAbsentReason = reason;
            return panel;
        }

        Observation observation = Blank(sign.Value, observed: false);
        if (sign == VitalSign.BloodPressure)
        {
            observation.Component.AddRange(new[] { VitalCodes.Systolic, VitalCodes.Diastolic }
                .Select(code => new Observation.ComponentComponent { Code = Concepts.Loinc(code), DataAbsentReason = (CodeableConcept)reason.DeepCopy() }));
        }
        else
        {
            observation.DataAbsentReason = reason;
        }

        return observation;
    }

    private static Observation Blank(VitalSign sign, bool observed)
    {
        VitalCode code = VitalCodes.Of(sign);
        Observation observation = Vital(code.Profile);
        observation.Code = observed ? new CodeableConcept { Text = "Pain 0 to 10, observed by staff" } : Concepts.Of(FhirSystems.Loinc, code.Code, code.Display);
        if (code.Beside is { } beside)
        {
            observation.Code.Coding.Add(new(FhirSystems.Loinc, beside.Code, beside.Display));
        }

        return observation;
    }

    private static Observation Vital(string? profile) => new()
    {
        Meta = profile is null ? null : new Meta { Profile = [FhirSystems.Profiles + profile] },
        Status = ObservationStatus.Final,
        Category = [Concepts.Of(FhirSystems.Category, "vital-signs", "Vital Signs")],
    };

    private static void Value(Observation observation, Core.Quantities.Quantity value)
    {
        Quantity Measured(decimal number, string ucum) => Concepts.Quantity(number, ucum, VitalCodes.Of(value.Sign).Units[ucum]);
        if (value is BloodPressure pressure)
        {
            observation.Component.Add(new() { Code = Concepts.Loinc(VitalCodes.Systolic), Value = Measured(pressure.Systolic, VitalCodes.Pressure) });
            observation.Component.Add(new() { Code = Concepts.Loinc(VitalCodes.Diastolic), Value = Measured(pressure.Diastolic, VitalCodes.Pressure) });
            return;
        }

        observation.Value = value switch
        {
            BodyTemperature v => Measured(v.Degrees, v.Unit == TemperatureUnit.Celsius ? "Cel" : "[degF]"),
            HeartRate v => Measured(v.PerMinute, "/min"),
            RespiratoryRate v => Measured(v.PerMinute, "/min"),
            OxygenSaturation v => Measured(v.Percent, "%"),
            BodyWeight v => Measured(v.Value, v.Unit == WeightUnit.Kilograms ? "kg" : "[lb_av]"),
            PainScore v => Measured(v.OfTen, "{score}"),
            _ => throw new InvalidOperationException($"no form for a {value.GetType().Name}"),
        };
    }

    private static void How(Observation observation, Reading reading)
    {
        Circumstances how = reading.How;
        bool counted = how.Counted is not null;
        observation.BodySite = how.Site is { } site ? Concepts.Snomed(SnomedCodes.Sites[site]) : how.Arm is { } arm ? Concepts.Snomed(SnomedCodes.Arms[arm]) : null;
        observation.Method = reading.Value.Sign switch
        {
            VitalSign.Pulse when counted => Concepts.Snomed(SnomedCodes.Palpation),
            VitalSign.Respirations when counted => Concepts.Snomed(SnomedCodes.Inspection),
            _ => null,
        };
        if (how.Position is { } position)
        {
            observation.Extension.Add(new(FhirSystems.BodyPosition, Concepts.Snomed(SnomedCodes.Positions[position])));
        }

        if (how.Oxygen is { } oxygen)
        {
            observation.Component.Add(oxygen.LitresPerMinute is { } litres
                ? new() { Code = Concepts.Loinc(VitalCodes.OxygenFlow), DataAbsentReason = Concepts.Of(FhirSystems.Absent, "as-text", "As Text", $"{litres.ToString(CultureInfo.InvariantCulture)} {VitalCodes.Flow}") }
                : new() { Code = Concepts.Loinc(VitalCodes.OxygenFlow), DataAbsentReason = Concepts.Of(FhirSystems.Absent, "unknown", "Unknown", "on oxygen; the flow was not said") });
        }

        observation.Device = (how.Device, how.Machine) switch
        {
            (DeviceNote.Own, _) => new ResourceReference { Type = "Device", Display = "the resident's own" },
            (DeviceNote.Other, _) => new ResourceReference { Type = "Device", Display = "another one than before" },
            (_, true) => new ResourceReference { Type = "Device", Display = "a machine with a display" },
            _ => null,
        };
        observation.Note.AddRange(Notes(how).Select(text => new Annotation { Text = text }));
    }

    /// <summary>What R4 has no element for.</summary>
    private static IEnumerable<string> Notes(Circumstances how)
    {
        string?[] notes =
        [
            how.Uneven ? "The pulse was felt as uneven." : null,
            how.Counted is { } counted ? $"Counted {counted}{(how.CountedSeconds is { } seconds ? $" in {seconds} seconds" : "")}." : null,
            how.Oxygen is { IsRoomAir: true } ? "On room air." : null,
            how.Delivery is { } delivery ? delivery == OxygenDelivery.Mask ? "Oxygen by mask." : "Oxygen by nasal cannula." : null,
            how.Cuff is { } cuff ? $"Cuff: {cuff.ToString().ToLowerInvariant()}." : null,
            how.Medicine is { } medicine ? $"{medicine} the medicine." : null,
            how.Observed ? "Observed: the resident can't say how strong the pain is." : null,
            how.Machine ? "Read from a machine's display." : null,
            how.MinutesSinceFoodOrDrink is { } food ? $"{food} minutes after food, drink, gum or smoke." : null,
            how.MinutesRested is { } rested ? $"After {rested} minutes of rest, before the rest was over." : null,
            how.MinutesStanding is { } standing ? $"After {standing} minutes of standing." : null,
            how.TooEarly ? "A second measurement before its time." : null,
            how.SaidAsGuessFirst ? "Said as a guess first, then again without a count between." : null,
        ];
        return notes.OfType<string>();
    }
}
