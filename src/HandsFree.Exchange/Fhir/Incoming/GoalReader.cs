using System.Globalization;
using HandsFree.Core.Files;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Rosters;
using Hl7.Fhir.Model;
using Quantity = Hl7.Fhir.Model.Quantity;

namespace HandsFree.Exchange.Fhir.Incoming;

/// <summary>A Goal as ordered limits. R4 has no other resource that says between which values one person is to be: a target with the LOINC code of a
/// vital sign and a range, or a quantity with "at most" or "at least". That a target means a limit for a report is for a nurse to say.</summary>
internal static class GoalReader
{
    private static readonly Dictionary<string, LimitedValue> Values = new()
    {
        ["8310-5"] = LimitedValue.TemperatureFahrenheit,
        ["8867-4"] = LimitedValue.Pulse,
        ["9279-1"] = LimitedValue.Respirations,
        [VitalCodes.Systolic] = LimitedValue.Systolic,
        [VitalCodes.Diastolic] = LimitedValue.Diastolic,
        ["2708-6"] = LimitedValue.OxygenSaturation,
        ["59408-5"] = LimitedValue.OxygenSaturation,
        ["29463-7"] = LimitedValue.WeightPounds,
        ["72514-3"] = LimitedValue.Pain,
    };

    /// <summary>The limits, and what is wrong with what is none.</summary>
    public static (IReadOnlyList<OrderedLimit> Limits, string? Wrong) Of(Goal goal, Bundle bundle)
    {
        if (goal.LifecycleStatus is not (Goal.GoalLifecycleStatus.Active or Goal.GoalLifecycleStatus.Accepted))
        {
            return ([], $"is {goal.LifecycleStatus?.ToString().ToLowerInvariant() ?? "without a status"}, not active");
        }

        string who = goal.ExpressedBy is { } by ? by.Display ?? (bundle.Named(by.Reference) is Practitioner { Name: [var name, ..] } ? RosterFhir.Words(name) : "") : "";
        string day = (goal.Start as Date)?.Value ?? goal.StatusDate ?? "";
        if (who.Length == 0 || PlainText.WhyNot(who) is not null)
        {
            return ([], "does not say in plain words who wants it; expressedBy with a display, or a Practitioner of the Bundle, is needed");
        }

        if (!DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly on))
        {
            return ([], "does not say from which day on; startDate or statusDate with year, month and day is needed");
        }

        List<OrderedLimit> limits = [];
        List<string> wrong = [];
        foreach (Goal.TargetComponent target in goal.Target)
        {
            if (target.Measure.CodesOf(FhirSystems.Loinc).FirstOrDefault(Values.ContainsKey) is not { } code)
            {
                wrong.Add("a target is of no number that can be limited here");
                continue;
            }

            LimitedValue value = Values[code];
            (decimal? least, decimal? greatest) = (Bound(target, value, low: true), Bound(target, value, low: false));
            if ((least is null && greatest is null) || least > greatest)
            {
                wrong.Add($"the target of {RosterWords.Of(RosterWords.Values, value)} is no range and no \"at most\" or \"at least\" in a unit of UCUM that is known here");
                continue;
            }

            limits.Add(new(value, least, greatest, who, on));
        }

        return (limits, wrong.Count > 0 ? string.Join("; ", wrong) : limits.Count == 0 ? "has no target" : null);
    }

    private static decimal? Bound(Goal.TargetComponent target, LimitedValue value, bool low) => target.Detail switch
    {
        Hl7.Fhir.Model.Range range => Kept(low ? range.Low : range.High, value),
        Quantity { Comparator: Quantity.QuantityComparator.LessOrEqual or Quantity.QuantityComparator.LessThan } most when !low => Kept(most, value),
        Quantity { Comparator: Quantity.QuantityComparator.GreaterOrEqual or Quantity.QuantityComparator.GreaterThan } least when low => Kept(least, value),
        _ => null,
    };

    /// <summary>A number as the roster keeps it: Fahrenheit, pounds; null for another unit or what can't be kept.</summary>
    private static decimal? Kept(Quantity? quantity, LimitedValue value)
    {
        if (quantity is not { Value: { } number and >= 0, System: FhirSystems.Ucum, Code: { } unit })
        {
            return null;
        }

        RosterUnits units = new(unit == "Cel" ? TemperatureUnit.Celsius : TemperatureUnit.Fahrenheit, unit == "kg" ? WeightUnit.Kilograms : WeightUnit.Pounds);
        bool known = value switch
        {
            LimitedValue.TemperatureFahrenheit => unit is "Cel" or "[degF]",
            LimitedValue.WeightPounds => unit is "kg" or "[lb_av]",
            LimitedValue.Pulse or LimitedValue.Respirations => unit == "/min",
            LimitedValue.Systolic or LimitedValue.Diastolic => unit == VitalCodes.Pressure,
            LimitedValue.OxygenSaturation => unit == "%",
            _ => unit is "{score}" or "1",
        };
        return known ? units.Kept(value, number).Kept : null;
    }
}
