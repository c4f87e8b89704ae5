using HandsFree.Core.Files;
using HandsFree.Core.Quantities;

namespace HandsFree.App.Homes;

/// <summary>Numbers of the roster, from the home's units to those of the rules.</summary>
internal sealed class ValueReader(string path, HomeSettings settings, ICollection<FileError> errors)
{
    private const decimal MostWeight = 999.9m;

    /// <summary>The number of a field in degrees Fahrenheit, pounds, or what the value has; null where the field is not there. A
    /// temperature that the home's unit can't have is an error: it was written in the other one.</summary>
    /// <param name="item">With the field "value", which says what it is a number of.</param>
    /// <param name="name">The field.</param>
    public decimal? Exact(LocatedNode item, string name)
    {
        if (item[name] is not { } field)
        {
            return null;
        }

        string value = item.TextOf("value")!;
        int decimals = value is "temperature" or "weight" ? 1 : 0;
        decimal greatest = value == "weight" ? MostWeight : field.Number;
        if (decimal.Round(field.Number, decimals) != field.Number || field.Number > greatest)
        {
            string wanted = decimals == 0 ? "a whole number" : value == "weight" ? $"0 to {MostWeight} in tenths" : "in tenths of a degree";
            errors.Add(new(path, field.Line, $"\"{name}\" is {field.InWords}, must be {wanted} for {value}"));
            return null;
        }

        return value switch
        {
            "temperature" => Fahrenheit(field, name),
            "weight" => settings.WeightUnit == WeightUnit.Kilograms ? BodyWeight.FromKilograms(field.Number).Pounds : field.Number,
            _ => field.Number,
        };
    }

    private decimal? Fahrenheit(LocatedNode field, string name)
    {
        BodyTemperature? temperature = BodyTemperature.Inferred(field.Number);
        if (temperature?.Unit == settings.TemperatureUnit)
        {
            return temperature.Fahrenheit;
        }

        string unit = settings.TemperatureUnit == TemperatureUnit.Celsius ? "Celsius" : "Fahrenheit";
        errors.Add(new(path, field.Line, $"\"{name}\" is {field.InWords}, and no temperature in degrees {unit}, the unit that home.json says or leaves as it is; write it in that unit"));
        return null;
    }
}
