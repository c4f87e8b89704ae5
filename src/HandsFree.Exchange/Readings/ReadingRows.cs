using System.Globalization;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Exchange.Readings;

/// <summary>Readings as the cells of <see cref="ReadingColumns"/>.</summary>
internal static class ReadingRows
{
    /// <summary>The cells of a reading, by column; only those that hold something.</summary>
    public static Dictionary<string, string> Cells(Reading reading)
    {
        Dictionary<string, string> cells = [];
        switch (reading.Value)
        {
            case BodyTemperature { Unit: TemperatureUnit.Fahrenheit } v: cells[ReadingColumns.Fahrenheit] = Text(v.Degrees); break;
            case BodyTemperature v: cells[ReadingColumns.Celsius] = Text(v.Degrees); break;
            case HeartRate v: cells[ReadingColumns.PulsePerMinute] = Text(v.PerMinute); break;
            case RespiratoryRate v: cells[ReadingColumns.RespirationsPerMinute] = Text(v.PerMinute); break;
            case BloodPressure v: (cells[ReadingColumns.Systolic], cells[ReadingColumns.Diastolic]) = (Text(v.Systolic), Text(v.Diastolic)); break;
            case OxygenSaturation v: cells[ReadingColumns.OxygenPercent] = Text(v.Percent); break;
            case BodyWeight { Unit: WeightUnit.Pounds } v: cells[ReadingColumns.Pounds] = Text(v.Value); break;
            case BodyWeight v: cells[ReadingColumns.Kilograms] = Text(v.Value); break;
            case PainScore v: cells[ReadingColumns.PainOfTen] = Text(v.OfTen); break;
            default: throw new InvalidOperationException($"no column for a {reading.Value.GetType().Name}");
        }

        Circumstances how = reading.How;
        Put(cells, ReadingColumns.Site, how.Site is { } site ? RosterWords.Of(RosterWords.Sites, site) : null);
        Put(cells, ReadingColumns.Rhythm, how.Uneven ? "uneven" : null);
        Put(cells, ReadingColumns.Arm, how.Arm is { } arm ? CellWords<Arm>.Of(arm) : null);
        Put(cells, ReadingColumns.Position, how.Position is { } position ? CellWords<BodyPosition>.Of(position) : null);
        Put(cells, ReadingColumns.Supply, how.Oxygen is { } supply ? Supply(supply) : null);
        foreach (CircumstanceColumn column in CircumstanceColumns.All)
        {
            Put(cells, column.Name, column.Write(how));
        }

        return cells;
    }

    /// <summary>The cells in the order of some columns.</summary>
    public static IReadOnlyList<string?> Row(this IReadOnlyDictionary<string, string> cells, IReadOnlyList<string> columns) =>
        [.. columns.Select(column => cells.GetValueOrDefault(column))];

    private static string Supply(OxygenSupply supply) => supply switch
    {
        { IsRoomAir: true } => "air",
        { LitresPerMinute: { } litres } => Text(litres),
        _ => "oxygen",
    };

    private static string Text(decimal number) => number.ToString("0.#####", CultureInfo.InvariantCulture);

    private static void Put(Dictionary<string, string> cells, string column, string? text)
    {
        if (text is not null)
        {
            cells[column] = text;
        }
    }
}
