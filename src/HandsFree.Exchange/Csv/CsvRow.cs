namespace HandsFree.Exchange.Csv;

/// <summary>One row of a table.</summary>
/// <param name="Line">The line of the file on which it begins, from 1.</param>
/// <param name="Cells">The cells by column name; only those that hold something.</param>
public sealed record CsvRow(int Line, IReadOnlyDictionary<string, CsvCell> Cells)
{
    /// <summary>The cell of a column, or null where it is empty or there is no such column.</summary>
    public CsvCell? this[string column] => Cells.GetValueOrDefault(column);
}
