namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>Something that goes wrong around a journal, and what must hold then.</summary>
/// <param name="Name">One word or two, for --only.</param>
/// <param name="Try">Makes it go wrong, as often as it is told; says what held, throws <see cref="FaultMissedException"/> where it did not.</param>
internal sealed record Fault(string Name, Func<int, string> Try)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Fault> All { get; } =
    [
        new("full disk", FullDisk.Try),
        new("file limit", FileLimit.Try),
        new("read-only", ReadOnlyFile.Try),
        new("locked", LockedFile.Try),
        new("writers", Writers.Try),
        new("truncated", TruncatedFile.Try),
        new("clock", WrongClock.Try),
        new("calendar", Calendar.Try),
    ];

    /// <summary>Tries them and writes a table.</summary>
    /// <param name="times">How often each; the number that makes a full run is 20.</param>
    /// <param name="only">One of them, or null for all.</param>
    /// <param name="output">Gets the table.</param>
    /// <returns>0 where all held.</returns>
    public static int Run(int times, string? only, TextWriter output)
    {
        int missed = 0;
        foreach (Fault fault in All.Where(f => only is null || f.Name == only))
        {
            string outcome;
            try
            {
                outcome = fault.Try(times);
            }
            catch (FaultMissedException broken)
            {
                missed++;
                outcome = $"NOT HELD: {broken.Message}";
            }

            output.WriteLine($"{fault.Name,-12} {outcome}");
        }

        return missed == 0 ? 0 : 1;
    }
}
