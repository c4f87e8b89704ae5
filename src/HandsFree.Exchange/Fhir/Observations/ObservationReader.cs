using System.Globalization;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Observations;

/// <summary>An Observation as a reading of ours, or why it is none.</summary>
public static class ObservationReader
{
    private static readonly HashSet<ObservationStatus> Stands = [ObservationStatus.Final, ObservationStatus.Amended, ObservationStatus.Corrected];

    /// <summary>Reads code, value, unit, and how it was taken.</summary>
    /// <param name="observation">As another program wrote it.</param>
    /// <param name="zone">The home's time zone, for a day without a time.</param>
    public static (ReadObservation? Read, string? Not) Of(Observation observation, TimeZoneInfo zone)
    {
        if (observation.Status is not { } status || !Stands.Contains(status))
        {
            return (null, $"its status is {observation.Status?.ToString().ToLowerInvariant() ?? "missing"}, so it is no value that stands");
        }

        if (VitalCodes.All.FirstOrDefault(row => observation.Code.CodesOf(FhirSystems.Loinc).Any(code => code == row.Code || code == row.Beside?.Code || row.Also.Contains(code))) is not { } row)
        {
            return (null, "it is none of the seven vital signs");
        }

        (Core.Quantities.Quantity? value, string? wrong) = row.Sign == VitalSign.BloodPressure ? Pressure(observation) : Single(observation, row);
        if (value is null)
        {
            return (null, wrong);
        }

        return Moment(observation.Effective, zone) is { } at
            ? (new(new Reading(value, How(observation, row.Sign)), at), null)
            : (null, "effective names no day; year, month and day at least are needed");
    }

    private static (Core.Quantities.Quantity? Value, string? Wrong) Single(Observation observation, VitalCode row)
    {
        if (observation.Value is not Hl7.Fhir.Model.Quantity { Value: { } number } quantity)
        {
            return (null, observation.DataAbsentReason is null ? "it has no value" : "it says why there is no value");
        }

        string? unit = Unit(quantity);
        if (unit is null || !row.Units.ContainsKey(unit))
        {
            return (null, $"its unit is \"{quantity.Code ?? quantity.Unit}\"; UCUM's {string.Join(" or ", row.Units.Keys)} is needed");
        }

        string? ours = unit switch { "Cel" => "C", "[degF]" => "F", "kg" => "kg", "[lb_av]" => "lb", _ => null };
        Core.Quantities.Quantity? value = QuantityFrom.Number(row.Sign, new SpokenNumber(Rounded(row.Sign, number)), ours);
        return (value, value is null ? $"{number.ToString(CultureInfo.InvariantCulture)} {unit} can't be kept for this sign" : null);
    }

    /// <summary>Devices send more decimals than this record keeps: temperature and weight to a tenth, half away from zero.</summary>
    private static decimal Rounded(VitalSign sign, decimal number) =>
        sign is VitalSign.Temperature or VitalSign.Weight ? decimal.Round(number, 1, MidpointRounding.AwayFromZero) : number;

    private static (Core.Quantities.Quantity? Value, string? Wrong) Pressure(Observation observation)
    {
        decimal? upper = Component(observation, VitalCodes.Systolic, VitalCodes.Pressure);
        decimal? lower = Component(observation, VitalCodes.Diastolic, VitalCodes.Pressure);
        Core.Quantities.Quantity? value = upper is { } high && lower is { } low ? QuantityFrom.Number(VitalSign.BloodPressure, new SpokenNumber(high, low), null) : null;
        return (value, value is null ? "it does not have both numbers of a blood pressure in mm[Hg]" : null);
    }

    private static decimal? Component(Observation observation, string code, string unit) =>
        observation.Component.Find(c => c.Code.CodesOf(FhirSystems.Loinc).Contains(code))?.Value is Hl7.Fhir.Model.Quantity quantity && Unit(quantity) == unit ? quantity.Value : null;

    /// <summary>A flow as this program writes it: "2 L/min" as text.</summary>
    private static decimal? Flow(Observation observation) =>
        observation.Component.Find(c => c.Code.CodesOf(FhirSystems.Loinc).Contains(VitalCodes.OxygenFlow))?.DataAbsentReason?.Text is { } text
        && text.EndsWith($" {VitalCodes.Flow}", StringComparison.Ordinal)
        && decimal.TryParse(text[..^(VitalCodes.Flow.Length + 1)], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal litres)
            ? litres
            : null;

    /// <summary>The UCUM code; where there is none, a unit that is written as one.</summary>
    private static string? Unit(Hl7.Fhir.Model.Quantity quantity) =>
        quantity.Code is { } code ? (quantity.System == FhirSystems.Ucum ? code : null) : quantity.Unit;

    private static Circumstances How(Observation observation, VitalSign sign)
    {
        string[] sites = [.. observation.BodySite.CodesOf(FhirSystems.Snomed)];
        string[] positions = [.. observation.Extension.Where(e => e.Url == FhirSystems.BodyPosition).SelectMany(e => (e.Value as CodeableConcept).CodesOf(FhirSystems.Snomed))];
        decimal? flow = Component(observation, VitalCodes.OxygenFlow, VitalCodes.Flow) ?? Flow(observation);
        return new()
        {
            Site = sign == VitalSign.Temperature ? Said(SnomedCodes.Sites, sites) : null,
            Arm = sign == VitalSign.BloodPressure ? Said(SnomedCodes.Arms, sites) : null,
            Position = sign == VitalSign.BloodPressure ? Said(SnomedCodes.Positions, positions) : null,
            Oxygen = sign == VitalSign.OxygenSaturation && flow is { } litres ? new OxygenSupply(litres) : null,
        };
    }

    private static T? Said<T>(IReadOnlyDictionary<T, (string Code, string Display)> concepts, string[] codes)
        where T : struct => concepts.Where(c => codes.Contains(c.Value.Code)).Select(c => (T?)c.Key).FirstOrDefault();

    /// <summary>A day without a time stands at noon of the home.</summary>
    private static DateTimeOffset? Moment(DataType? effective, TimeZoneInfo zone)
    {
        string? text = effective switch { FhirDateTime moment => moment.Value, Period period => period.Start, Instant instant => instant.Value?.ToString("O", CultureInfo.InvariantCulture), _ => null };
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            DateTime noon = day.ToDateTime(new TimeOnly(12, 0));
            return new DateTimeOffset(noon, zone.GetUtcOffset(noon));
        }

        return text is { Length: > 10 } && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset at) ? at : null;
    }
}
