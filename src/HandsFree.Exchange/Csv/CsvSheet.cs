using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace HandsFree.Exchange.Csv;

/// <summary>Writes a table as RFC 4180 wants it: comma, quotation marks where needed, CR LF after every line. UTF-8 with a byte order mark,
/// without which spreadsheets on Windows take it for another encoding (common practice, no source).</summary>
public static class CsvSheet
{
    /// <summary>Writes header and rows, one after the other; a cell that would be a formula is guarded.</summary>
    /// <param name="target">Stays open.</param>
    /// <param name="header">The columns.</param>
    /// <param name="rows">As many cells each as there are columns; null is an empty cell.</param>
    /// <returns>How many rows were written.</returns>
    public static int Write(Stream target, IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string?>> rows)
    {
        using StreamWriter text = new(target, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        using CsvWriter csv = new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" });
        Line(csv, header);
        int written = 0;
        foreach (IReadOnlyList<string?> row in rows)
        {
            if (row.Count != header.Count)
            {
                throw new ArgumentException($"a row of {row.Count} cells in a table of {header.Count} columns", nameof(rows));
            }

            Line(csv, row);
            written++;
        }

        return written;
    }

    private static void Line(CsvWriter csv, IReadOnlyList<string?> cells)
    {
        foreach (string? cell in cells)
        {
            csv.WriteField(cell is null ? "" : FormulaGuard.Guarded(cell));
        }

        csv.NextRecord();
    }
}
