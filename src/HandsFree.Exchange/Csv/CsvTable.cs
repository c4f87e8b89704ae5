using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using HandsFree.Core.Files;

namespace HandsFree.Exchange.Csv;

/// <summary>A table of a spreadsheet: UTF-8, a header, rows parted by comma, semicolon or tab (RFC 4180 quoting).</summary>
/// <param name="Columns">The columns that the file has, as the program names them.</param>
/// <param name="Rows">The rows that hold anything, in their order.</param>
public sealed record CsvTable(IReadOnlySet<string> Columns, IReadOnlyList<CsvRow> Rows)
{
    private const int MostBytes = 10_000_000;
    private const int MostOfCell = 1_000;

    /// <summary>Reads a table.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes.</param>
    /// <param name="known">The columns that may be there; upper and lower case, "_" and "-" for a blank are the same.</param>
    /// <param name="needed">Those that must be there, and hold something in every row.</param>
    /// <param name="errors">Gets everything that is wrong.</param>
    /// <returns>The table, also with errors in its rows; null where there is none to read.</returns>
    public static CsvTable? Read(string file, byte[] content, IReadOnlyList<string> known, IReadOnlyList<string> needed, ICollection<FileError> errors)
    {
        if (Text(file, content, errors) is not { } text)
        {
            return null;
        }

        CsvConfiguration configuration = new(CultureInfo.InvariantCulture)
        {
            DetectDelimiter = true,
            DetectDelimiterValues = [",", ";", "\t"],
            TrimOptions = TrimOptions.Trim,
            BadDataFound = bad => errors.Add(new(file, bad.Context.Parser!.RawRow, "a quotation mark stands alone; write \"\" for one inside a quoted cell, and close the cell with one")),
        };
        using StringReader reader = new(text);
        using CsvParser parser = new(reader, configuration);
        if (!parser.Read())
        {
            errors.Add(new(file, 1, $"is empty; the first line names the columns: {string.Join(", ", needed)}"));
            return null;
        }

        string?[] columns = Header(file, parser, known, needed, errors);
        List<CsvRow> rows = [];
        int line = parser.RawRow + 1;
        while (parser.Read())
        {
            if (parser.Record!.Any(c => c.Length > 0))
            {
                rows.Add(Row(file, line, parser.Record!, columns, needed, errors));
            }

            line = parser.RawRow + 1;
        }

        return new(columns.OfType<string>().ToHashSet(), rows);
    }

    private static string? Text(string file, byte[] content, ICollection<FileError> errors)
    {
        if (content.Length > MostBytes)
        {
            errors.Add(new(file, 0, $"larger than {MostBytes / 1_000_000} MB; cut it into parts"));
            return null;
        }

        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(content).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException wrong)
        {
            int line = content.AsSpan(0, Math.Max(wrong.Index, 0)).Count((byte)'\n') + 1;
            errors.Add(new(file, line, "is not written in UTF-8; save it as \"CSV UTF-8\""));
            return null;
        }
    }

    private static string?[] Header(string file, CsvParser parser, IReadOnlyList<string> known, IReadOnlyList<string> needed, ICollection<FileError> errors)
    {
        string[] header = parser.Record!;
        string?[] columns = [.. header.Select(name => known.FirstOrDefault(k => Plain(k) == Plain(name)))];
        for (int i = 0; i < columns.Length; i++)
        {
            if (PlainText.WhyNot(header[i]) is { } wrong)
            {
                errors.Add(new(file, 1, $"a column's name {wrong}") { Column = i + 1 });
            }
            else if (columns[i] is null && header[i].Length > 0)
            {
                errors.Add(new(file, 1, $"the column \"{header[i]}\" is not known; known are: {string.Join(", ", known)}") { Column = i + 1 });
            }
            else if (columns[i] is { } name && Array.IndexOf(columns, name) < i)
            {
                errors.Add(new(file, 1, $"the column \"{name}\" is there twice; keep one") { Column = i + 1 });
            }
        }

        foreach (string missing in needed.Except(columns.OfType<string>()))
        {
            errors.Add(new(file, 1, $"the column \"{missing}\" is missing; needed are: {string.Join(", ", needed)}"));
        }

        return columns;
    }

    private static CsvRow Row(string file, int line, string[] record, string?[] columns, IReadOnlyList<string> needed, ICollection<FileError> errors)
    {
        if (record.Length > columns.Length)
        {
            errors.Add(new(file, line, $"has {record.Length} cells where the header has {columns.Length}; put a cell that holds a comma into quotation marks") { Column = columns.Length + 1 });
        }

        Dictionary<string, CsvCell> cells = [];
        for (int i = 0; i < Math.Min(record.Length, columns.Length); i++)
        {
            if ((record[i].Length > MostOfCell ? $"has more than {MostOfCell} characters; shorten it" : PlainText.WhyNot(record[i])) is { } wrong)
            {
                errors.Add(new(file, line, $"\"{columns[i] ?? "a cell"}\" {wrong}") { Column = i + 1 });
            }

            if (columns[i] is { } name && record[i].Length > 0)
            {
                cells.TryAdd(name, new(FormulaGuard.Plain(record[i]), line, i + 1, name));
            }
        }

        foreach (string missing in needed.Where(n => columns.Contains(n) && !cells.ContainsKey(n)))
        {
            errors.Add(new(file, line, $"\"{missing}\" is empty; write it") { Column = Array.IndexOf(columns, missing) + 1 });
        }

        return new(line, cells);
    }

    private static string Plain(string name) => name.Trim().Replace('_', ' ').Replace('-', ' ').ToLowerInvariant();
}
