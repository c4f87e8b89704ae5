using System.Globalization;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Exchange.Csv;

namespace HandsFree.Exchange.Readings;

/// <summary>The cells of a table of readings as what they say; null where a cell is empty or can't be read, then with a fault.</summary>
/// <param name="weightUnit">Of a weight without a unit.</param>
/// <param name="zone">Of a moment without an offset.</param>
/// <param name="fault">Gets the cell and what should stand there.</param>
internal sealed class ReadingCells(WeightUnit weightUnit, TimeZoneInfo zone, Action<CsvCell, string> fault)
{
    private const decimal MostLitres = 60;

    /// <summary>"lb" or "kg".</summary>
    public string WeightUnit => QuantityFrom.Text(weightUnit);

    /// <summary>What fits a reading of any kind.</summary>
    public Circumstances Circumstances(CsvRow row)
    {
        Circumstances how = Core.Observations.Circumstances.Unsaid;
        foreach (CircumstanceColumn column in CircumstanceColumns.All)
        {
            if (row[column.Name] is { } cell)
            {
                how = column.Read(how, cell.Text) ?? Faulty(cell, column.Wanted, how);
            }
        }

        return how;
    }

    /// <summary>A quantity.</summary>
    public Quantity? Value(CsvCell? cell, VitalSign sign, string? unit, string wanted)
    {
        if (cell is null)
        {
            return null;
        }

        decimal?[] numbers = [.. cell.Text.Split('/').Select(Number)];
        SpokenNumber? said = numbers switch
        {
            [{ } one] => new(one),
            [{ } upper, { } lower] => new(upper, lower),
            _ => null,
        };
        return (said is null ? null : QuantityFrom.Number(sign, said, unit)) ?? Faulty<Quantity?>(cell, wanted, null);
    }

    /// <summary>A blood pressure of two cells.</summary>
    public Quantity? Pair(CsvCell? upper, CsvCell? lower)
    {
        if (upper is null || lower is null)
        {
            return (upper ?? lower) is { } alone ? Faulty<Quantity?>(alone, "both numbers, or neither", null) : null;
        }

        return Number(upper.Text) is { } high && Number(lower.Text) is { } low && QuantityFrom.Number(VitalSign.BloodPressure, new(high, low), null) is { } pair
            ? pair
            : Faulty<Quantity?>(upper, "whole numbers from 0 to 400 for both", null);
    }

    /// <summary>Room air or oxygen.</summary>
    public OxygenSupply? Supply(CsvCell? cell) => cell switch
    {
        null => null,
        { Text: "air" } => OxygenSupply.RoomAir,
        { Text: "oxygen" } => OxygenSupply.FlowUnsaid,
        _ when Number(cell.Text) is { } litres and <= MostLitres => new(litres),
        _ => Faulty<OxygenSupply?>(cell, "\"air\" or litres per minute", null),
    };

    /// <summary>One of some words.</summary>
    public T? Word<T>(CsvCell? cell, IReadOnlyDictionary<string, T> words)
        where T : struct => cell is null ? null
            : words.TryGetValue(cell.Text.ToLowerInvariant(), out T word) ? word
            : Faulty<T?>(cell, $"one of: {string.Join(", ", words.Keys)}", null);

    /// <summary>A moment; without an offset in the home's time.</summary>
    public DateTimeOffset? Moment(CsvCell? cell)
    {
        if (cell is null)
        {
            return null;
        }

        if (DateTime.TryParseExact(cell.Text, ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local))
        {
            return new DateTimeOffset(local, zone.GetUtcOffset(local));
        }

        return DateTimeOffset.TryParseExact(cell.Text, "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset moment)
            ? moment
            : Faulty<DateTimeOffset?>(cell, "day and time as 2026-03-01 08:05", null);
    }

    private static decimal? Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) ? number : null;

    private T Faulty<T>(CsvCell cell, string wanted, T otherwise)
    {
        fault(cell, wanted);
        return otherwise;
    }
}
