using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Exchange.Csv;
using HandsFree.Exchange.Readings;

namespace HandsFree.Exchange.Tables;

/// <summary>The readings of a record, one a line, with those that were not taken, and those that count no more marked as such.</summary>
public static class ReadingTable
{
    /// <summary>Writes the table.</summary>
    /// <returns>How many lines it has below the header.</returns>
    public static int Write(Stream target, RecordPart part) => CsvSheet.Write(target, ReadingColumns.OfReading, Rows(part));

    private static IEnumerable<IReadOnlyList<string?>> Rows(RecordPart part)
    {
        HashSet<string> inError = [.. part.Events.OfType<EnteredInError>().Select(e => e.Event)];
        HashSet<string> replaced = [.. part.Events.OfType<ReadingRecorded>().Where(r => !inError.Contains(r.Id)).Select(r => r.Amends).OfType<string>()];
        foreach ((long number, JournalEvent happened) in part.Entries)
        {
            Dictionary<string, string>? cells = happened switch
            {
                ReadingRecorded reading when part.Has(reading.Resident, reading.Confirmed.By.MeasuredAt) => Reading(part, reading),
                NotTakenRecorded missing when part.Has(missing.Resident, missing.At) => NotTaken(part, missing),
                _ => null,
            };
            if (cells is null)
            {
                continue;
            }

            cells["entry"] = number.ToString(CultureInfo.InvariantCulture);
            cells["event"] = happened.Id;
            cells[ReadingColumns.Status] = inError.Contains(happened.Id) ? ReadingColumns.InError
                : replaced.Contains(happened.Id) ? ReadingColumns.Replaced
                : happened is ReadingRecorded { Amends: not null } ? "amended"
                : "final";
            yield return cells.Row(ReadingColumns.OfReading);
        }
    }

    private static Dictionary<string, string> Reading(RecordPart part, ReadingRecorded reading)
    {
        Attribution by = reading.Confirmed.By;
        Dictionary<string, string> cells = ReadingRows.Cells(reading.Confirmed.Reading);
        cells[ReadingColumns.Resident] = reading.Resident;
        cells[ReadingColumns.Taken] = part.Moment(by.MeasuredAt);
        cells["entered"] = part.Moment(by.EnteredAt);
        cells["late entry"] = by.Late ? "yes" : "";
        cells["by"] = by.Person;
        cells["confirmed"] = CellWords<ConfirmedHow>.Of(reading.Confirmed.How);
        cells["decision"] = CellWords<Core.Rules.Outcome>.Of(reading.Decision.Outcome);
        cells["reasons"] = string.Join("; ", reading.Decision.Reasons.Select(r => r.Text));
        cells["replaces"] = reading.Amends ?? "";
        return cells;
    }

    private static Dictionary<string, string> NotTaken(RecordPart part, NotTakenRecorded missing)
    {
        string what = missing.Sign is { } sign ? Core.Residents.RosterWords.Of(Core.Residents.RosterWords.Signs, sign) : "all that was open";
        return new()
        {
            [ReadingColumns.Resident] = missing.Resident,
            [ReadingColumns.Taken] = part.Moment(missing.At),
            ["entered"] = part.Moment(missing.At),
            ["by"] = missing.Person,
            [ReadingColumns.NotTaken] = $"{what}: {CellWords<Core.Meanings.NotTakenReason>.Of(missing.Reason)}",
        };
    }
}
