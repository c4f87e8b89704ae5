using HandsFree.Core.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Exchange.Csv;

namespace HandsFree.Exchange.Readings;

/// <summary>Reads past readings from a table with the columns of <see cref="ReadingColumns"/>: written by hand, by another program, or by this one.</summary>
public sealed class ReadingCsv
{
    private const string ATemperature = "26 to 45 in degrees Celsius or 85 to 113 in degrees Fahrenheit, in tenths";
    private const string AWhole = "a whole number";

    private readonly string file;
    private readonly ReadingCells cells;
    private readonly List<FileError> errors = [];

    private ReadingCsv(string file, WeightUnit weightUnit, TimeZoneInfo zone) => (this.file, cells) = (file, new ReadingCells(weightUnit, zone, Fault));

    /// <summary>All sets, or every error with line and column.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes.</param>
    /// <param name="weightUnit">The home's unit of a weight.</param>
    /// <param name="zone">The home's time zone.</param>
    public static (IReadOnlyList<PastSet> Sets, IReadOnlyList<FileError> Errors) Read(string file, byte[] content, WeightUnit weightUnit, TimeZoneInfo zone)
    {
        ReadingCsv reader = new(file, weightUnit, zone);
        PastSet[] sets = [.. CsvTable.Read(file, content, ReadingColumns.All, ReadingColumns.Needed, reader.errors)?.Rows.Where(Counts).Select(reader.Set).OfType<PastSet>() ?? []];
        return reader.errors.Count > 0 ? ([], [.. reader.errors.OrderBy(e => e.Line).ThenBy(e => e.Column)]) : (sets, []);
    }

    /// <summary>A line of what was not taken, or of what counts no more, is no reading.</summary>
    private static bool Counts(CsvRow row) =>
        row[ReadingColumns.NotTaken] is null && row[ReadingColumns.Status]?.Text is not (ReadingColumns.Replaced or ReadingColumns.InError);

    private PastSet? Set(CsvRow row)
    {
        Circumstances any = cells.Circumstances(row);
        Circumstances temperature = any with { Site = cells.Word(row[ReadingColumns.Site], RosterWords.Sites) };
        Circumstances pulse = any with { Uneven = cells.Word(row[ReadingColumns.Rhythm], new Dictionary<string, bool> { ["even"] = false, ["uneven"] = true }) ?? false };
        Circumstances pressure = any with
        {
            Arm = cells.Word(row[ReadingColumns.Arm], CellWords<Arm>.All),
            Position = cells.Word(row[ReadingColumns.Position], CellWords<BodyPosition>.All),
        };
        Circumstances oxygen = any with { Oxygen = cells.Supply(row[ReadingColumns.Supply]) };
        (Quantity? Value, Circumstances How)[] found =
        [
            (cells.Value(row[ReadingColumns.Temperature], VitalSign.Temperature, null, ATemperature), temperature),
            (cells.Value(row[ReadingColumns.Fahrenheit], VitalSign.Temperature, "F", "0 to 150 in tenths"), temperature),
            (cells.Value(row[ReadingColumns.Celsius], VitalSign.Temperature, "C", "0 to 60 in tenths"), temperature),
            (cells.Value(row[ReadingColumns.Pulse] ?? row[ReadingColumns.PulsePerMinute], VitalSign.Pulse, null, AWhole), pulse),
            (cells.Value(row[ReadingColumns.Respirations] ?? row[ReadingColumns.RespirationsPerMinute], VitalSign.Respirations, null, AWhole), any),
            (cells.Value(row[ReadingColumns.BloodPressure], VitalSign.BloodPressure, null, "the upper and the lower number as 118/76"), pressure),
            (cells.Pair(row[ReadingColumns.Systolic], row[ReadingColumns.Diastolic]), pressure),
            (cells.Value(row[ReadingColumns.Oxygen] ?? row[ReadingColumns.OxygenPercent], VitalSign.OxygenSaturation, null, AWhole), oxygen),
            (cells.Value(row[ReadingColumns.Weight], VitalSign.Weight, cells.WeightUnit, "0 to 999.9 in tenths"), any),
            (cells.Value(row[ReadingColumns.Pounds], VitalSign.Weight, "lb", "0 to 999.9 in tenths"), any),
            (cells.Value(row[ReadingColumns.Kilograms], VitalSign.Weight, "kg", "0 to 999.9 in tenths"), any),
            (cells.Value(row[ReadingColumns.Pain] ?? row[ReadingColumns.PainOfTen], VitalSign.Pain, null, AWhole), any),
        ];
        Reading[] readings = [.. found.Where(f => f.Value is not null).Select(f => new Reading(f.Value!, f.How))];
        if (readings.GroupBy(r => r.Value.Sign).FirstOrDefault(sign => sign.Count() > 1) is { } twice)
        {
            errors.Add(new(file, row.Line, $"has two values of one kind ({string.Join(", ", twice.Select(r => r.Value.Sign).Distinct().Select(s => RosterWords.Of(RosterWords.Signs, s)))}); keep one"));
        }

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

        return row[ReadingColumns.Resident] is { } resident && cells.Moment(row[ReadingColumns.Taken]) is { } at && readings.Length > 0
            ? new PastSet(resident.Text, at, readings, symptoms)
            : null;
    }

    private void Fault(CsvCell cell, string wanted) =>
        errors.Add(new(file, cell.Line, $"\"{cell.Name}\" has \"{cell.Text}\"; write {wanted}") { Column = cell.Column });
}
