using System.Globalization;
using HandsFree.Core.Files;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Exchange.Csv;

namespace HandsFree.Exchange.Readings;

/// <summary>Reads sets of past readings from a table with the columns of <see cref="ReadingColumns"/>.</summary>
public sealed class ReadingCsv
{
    private readonly string file;
    private readonly WeightUnit weightUnit;
    private readonly TimeZoneInfo zone;
    private readonly List<FileError> errors = [];

    private ReadingCsv(string file, WeightUnit weightUnit, TimeZoneInfo zone) => (this.file, this.weightUnit, this.zone) = (file, weightUnit, zone);

    /// <summary>All sets, or every error with line and column.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes.</param>
    /// <param name="weightUnit">The home's unit of a weight.</param>
    /// <param name="zone">The home's time zone.</param>
    public static (IReadOnlyList<PastSet> Sets, IReadOnlyList<FileError> Errors) Read(string file, byte[] content, WeightUnit weightUnit, TimeZoneInfo zone)
    {
        ReadingCsv reader = new(file, weightUnit, zone);
        PastSet[] sets = [.. CsvTable.Read(file, content, ReadingColumns.All, ReadingColumns.Needed, reader.errors)?.Rows.Select(reader.Set).OfType<PastSet>() ?? []];
        return reader.errors.Count > 0 ? ([], [.. reader.errors.OrderBy(e => e.Line).ThenBy(e => e.Column)]) : (sets, []);
    }

    private PastSet? Set(CsvRow row)
    {
        Circumstances temperature = new() { Site = Word(row[ReadingColumns.Site], RosterWords.Sites) };
        Circumstances pulse = new() { Uneven = Word(row[ReadingColumns.Rhythm], new Dictionary<string, bool> { ["even"] = false, ["uneven"] = true }) ?? false };
        Circumstances pressure = new()
        {
            Arm = Word(row[ReadingColumns.Arm], Words<Arm>()),
            Position = Word(row[ReadingColumns.Position], Words<BodyPosition>()),
        };
        Circumstances oxygen = new() { Oxygen = Supply(row[ReadingColumns.Supply]) };
        (Quantity? Value, Circumstances How)[] found =
        [
            (Value(row, ReadingColumns.Temperature, VitalSign.Temperature, "26 to 45 in degrees Celsius or 85 to 113 in degrees Fahrenheit, in tenths"), temperature),
            (Value(row, ReadingColumns.Pulse, VitalSign.Pulse, "a whole number"), pulse),
            (Value(row, ReadingColumns.Respirations, VitalSign.Respirations, "a whole number"), Circumstances.Unsaid),
            (Value(row, ReadingColumns.BloodPressure, VitalSign.BloodPressure, "the upper and the lower number as 118/76"), pressure),
            (Value(row, ReadingColumns.Oxygen, VitalSign.OxygenSaturation, "a whole number"), oxygen),
            (Value(row, ReadingColumns.Weight, VitalSign.Weight, "0 to 999.9 in tenths"), Circumstances.Unsaid),
            (Value(row, ReadingColumns.Pain, VitalSign.Pain, "a whole number"), Circumstances.Unsaid),
        ];
        Reading[] readings = [.. found.Where(f => f.Value is not null).Select(f => new Reading(f.Value!, f.How))];
        HashSet<string> symptoms = [];
        foreach (string part in row[ReadingColumns.Symptoms]?.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [])
        {
            if (!Symptoms.All.Contains(part))
            {
                Fault(row[ReadingColumns.Symptoms]!, $"one of, parted by semicolons: {string.Join(", ", Symptoms.All)}");
            }

            symptoms.Add(part);
        }

        if (readings.Length == 0 && !ReadingColumns.All.Any(c => row[c] is not null && c is not (ReadingColumns.Resident or ReadingColumns.Taken)))
        {
            errors.Add(new(file, row.Line, "has no reading; write one or leave the line out"));
        }

        return row[ReadingColumns.Resident] is { } resident && Moment(row[ReadingColumns.Taken]) is { } at && readings.Length > 0
            ? new PastSet(resident.Text, at, readings, symptoms)
            : null;
    }

    private static Dictionary<string, T> Words<T>()
        where T : struct, Enum => Enum.GetValues<T>().ToDictionary(v => v.ToString().ToLowerInvariant());

    private Quantity? Value(CsvRow row, string column, VitalSign sign, string wanted)
    {
        if (row[column] is not { } cell)
        {
            return null;
        }

        decimal?[] numbers =
        [
            .. cell.Text.Split('/').Select(part =>
                decimal.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) ? number : (decimal?)null),
        ];
        SpokenNumber? said = numbers switch
        {
            [{ } one] => new(one),
            [{ } upper, { } lower] => new(upper, lower),
            _ => null,
        };
        Quantity? value = said is null ? null : QuantityFrom.Number(sign, said, sign == VitalSign.Weight ? QuantityFrom.Text(weightUnit) : null);
        if (value is null)
        {
            Fault(cell, wanted);
        }

        return value;
    }

    private OxygenSupply? Supply(CsvCell? cell) => cell switch
    {
        null => null,
        { Text: "air" } => OxygenSupply.RoomAir,
        _ when decimal.TryParse(cell.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal litres) && litres <= 60 => new(litres),
        _ => Wrong(cell, "\"air\" or litres per minute"),
    };

    private OxygenSupply? Wrong(CsvCell cell, string wanted)
    {
        Fault(cell, wanted);
        return null;
    }

    private T? Word<T>(CsvCell? cell, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        if (cell is null)
        {
            return null;
        }

        if (words.TryGetValue(cell.Text.ToLowerInvariant(), out T word))
        {
            return word;
        }

        Fault(cell, $"one of: {string.Join(", ", words.Keys)}");
        return null;
    }

    private DateTimeOffset? Moment(CsvCell? cell)
    {
        if (cell is null)
        {
            return null;
        }

        if (DateTime.TryParseExact(cell.Text, ["yyyy-MM-dd HH:mm", "yyyy-MM-dd'T'HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local))
        {
            return new DateTimeOffset(local, zone.GetUtcOffset(local));
        }

        Fault(cell, "day and time as 2026-03-01 08:05");
        return null;
    }

    private void Fault(CsvCell cell, string wanted) =>
        errors.Add(new(file, cell.Line, $"\"{cell.Name}\" has \"{cell.Text}\"; write {wanted}") { Column = cell.Column });
}
