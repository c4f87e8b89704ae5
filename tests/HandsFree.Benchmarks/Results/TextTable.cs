namespace HandsFree.Benchmarks.Results;

/// <summary>Columns as wide as their widest cell, the first to the left, the others to the right.</summary>
internal sealed class TextTable(params string[] header)
{
    private readonly List<string[]> lines = [header];

    /// <summary>Adds a line.</summary>
    public void Add(params string[] cells) => lines.Add(cells);

    /// <summary>Writes it.</summary>
    public void Write(TextWriter output)
    {
        int[] widths = [.. header.Select((_, i) => lines.Max(line => line[i].Length))];
        foreach (string[] line in lines)
        {
            output.WriteLine(string.Join("  ", line.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]))).TrimEnd());
        }
    }
}
