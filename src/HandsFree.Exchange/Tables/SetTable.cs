using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Exchange.Csv;
using HandsFree.Exchange.Readings;

namespace HandsFree.Exchange.Tables;

/// <summary>The readings that stand, one line for those of a resident that were taken together: of each kind one, each within
/// <see cref="Pause"/> of the one before.</summary>
public static class SetTable
{
    /// <summary>After a longer pause a new set begins (common practice, no source).</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMinutes(30);

    /// <summary>Writes the table.</summary>
    /// <returns>How many lines it has below the header.</returns>
    public static int Write(Stream target, RecordPart part) =>
        CsvSheet.Write(target, ReadingColumns.OfSet, Sets(part).OrderBy(set => set[0].Confirmed.By.MeasuredAt).ThenBy(set => set[0].Resident, StringComparer.Ordinal).Select(r => Row(part, r)));

    private static IEnumerable<List<ReadingRecorded>> Sets(RecordPart part)
    {
        foreach (var readings in PastReadings.Standing(part.Events).Where(r => part.Has(r.Resident, r.Confirmed.By.MeasuredAt)).GroupBy(r => r.Resident))
        {
            List<ReadingRecorded> set = [];
            foreach (ReadingRecorded reading in readings.OrderBy(r => r.Confirmed.By.MeasuredAt))
            {
                bool belongs = set.Count == 0
                    || (reading.Confirmed.By.MeasuredAt - set[^1].Confirmed.By.MeasuredAt <= Pause
                        && !set.Exists(r => r.Confirmed.Reading.Value.Sign == reading.Confirmed.Reading.Value.Sign));
                if (!belongs)
                {
                    yield return set;
                    set = [];
                }

                set.Add(reading);
            }

            yield return set;
        }
    }

    private static IReadOnlyList<string?> Row(RecordPart part, List<ReadingRecorded> set)
    {
        Dictionary<string, string> cells = new()
        {
            [ReadingColumns.Resident] = set[0].Resident,
            [ReadingColumns.Taken] = part.Moment(set[0].Confirmed.By.MeasuredAt),
        };
        foreach ((string column, string text) in set.SelectMany(r => ReadingRows.Cells(r.Confirmed.Reading)))
        {
            cells[column] = text;
        }

        return cells.Row(ReadingColumns.OfSet);
    }
}
