using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>What the rules said of a reading, as interpretation, reference range and note. Beyond a limit a report of this shift is L or H,
/// one of now LL or HH; a report for another reason is A. An accepted value for which a second measurement was asked has no interpretation.</summary>
internal static class ReadingMeaning
{
    public static void Add(Observation observation, OutgoingEvent entry, ReadingRecorded reading)
    {
        Core.Quantities.Quantity value = reading.Confirmed.Reading.Value;
        foreach ((LimitedValue limited, decimal number) in HomeOfTheDay.Numbers(value))
        {
            Observation.ComponentComponent? component = Component(observation, limited);
            List<Observation.ReferenceRangeComponent> ranges = component?.ReferenceRange ?? observation.ReferenceRange;
            List<CodeableConcept> interpretations = component?.Interpretation ?? observation.Interpretation;
            ReportLimits limits = entry.Limits.GetValueOrDefault(limited) ?? ReportLimits.None;
            if (limits is not { Low: null, High: null })
            {
                ranges.Add(Range(limits, limited, value));
            }

            string? code = Code(reading.Decision, limits.SideOf(number));
            if (component is null || code is not "A")
            {
                interpretations.AddRange(Concept(code));
            }
        }

        if (value is BloodPressure)
        {
            observation.Interpretation.AddRange(Concept(reading.Decision.Outcome == Outcome.Accept ? Code(reading.Decision, 0) : "A"));
        }

        if (reading.Decision.Outcome != Outcome.Accept)
        {
            string outcome = reading.Decision.Outcome == Outcome.ReportNow ? "report now" : "report this shift";
            observation.Note.Add(new Annotation { Text = $"By the home's rules: {outcome}. {string.Join("; ", reading.Decision.Reasons.Select(r => r.Text))}" });
        }
    }

    private static Observation.ComponentComponent? Component(Observation observation, LimitedValue limited) => limited switch
    {
        LimitedValue.Systolic => observation.Component[0],
        LimitedValue.Diastolic => observation.Component[1],
        _ => null,
    };

    private static string? Code(Decision decision, int side) => (decision.Outcome, side) switch
    {
        (Outcome.Accept, _) => decision.Recheck is null ? "N" : null,
        (Outcome.ReportNow, < 0) => "LL",
        (Outcome.ReportNow, > 0) => "HH",
        (Outcome.ReportThisShift, < 0) => "L",
        (Outcome.ReportThisShift, > 0) => "H",
        _ => "A",
    };

    private static IEnumerable<CodeableConcept> Concept(string? code) =>
        code is null ? [] : [Concepts.Of(FhirSystems.Interpretation, code, Interpretations.Displays[code])];

    private static Observation.ReferenceRangeComponent Range(ReportLimits limits, LimitedValue limited, Core.Quantities.Quantity value)
    {
        (string ucum, string unit) = Unit(value);
        Hl7.Fhir.Model.Quantity? Bound(ReportLimit? limit) => limit is null ? null : Concepts.Quantity(InUnit(limit.Number, value), ucum, unit);
        string Words(ReportLimit limit, string beyond) =>
            $"{(limit.IsBeyond ? "at and " : "")}{beyond} {InUnit(limit.Number, value).ToString(CultureInfo.InvariantCulture)} {unit} ({(limit.OrderedBy is { } who ? $"ordered by {who}" : limit.Authority == RuleAuthority.Home ? "the home's rule" : "the program's rule")})";
        string text = string.Join("; ", new[] { limits.Low is { } low ? Words(low, "below") : null, limits.High is { } high ? Words(high, "above") : null }.OfType<string>());
        return new()
        {
            Low = Bound(limits.Low),
            High = Bound(limits.High),
            Text = $"A nurse is told {text}",
        };
    }

    private static (string Ucum, string Text) Unit(Core.Quantities.Quantity value)
    {
        string ucum = value switch
        {
            BodyTemperature { Unit: TemperatureUnit.Celsius } => "Cel",
            BodyWeight { Unit: WeightUnit.Kilograms } => "kg",
            BodyTemperature => "[degF]",
            BodyWeight => "[lb_av]",
            _ => VitalCodes.Of(value.Sign).Units.Keys.First(),
        };
        return (ucum, VitalCodes.Of(value.Sign).Units[ucum]);
    }

    /// <summary>A limit is kept in Fahrenheit and pounds; beside a value in another unit it is converted, to a tenth.</summary>
    private static decimal InUnit(decimal number, Core.Quantities.Quantity value) => value switch
    {
        BodyTemperature { Unit: TemperatureUnit.Celsius } => decimal.Round((number - 32) * 5 / 9, 1, MidpointRounding.AwayFromZero),
        BodyWeight { Unit: WeightUnit.Kilograms } => decimal.Round(number * BodyWeight.KilogramsPerPound, 1, MidpointRounding.AwayFromZero),
        _ => decimal.Round(number, 1, MidpointRounding.AwayFromZero),
    };
}
