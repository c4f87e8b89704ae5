using HandsFree.App.Composition;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A run of the program in which nobody reads, types or gives a PIN.</summary>
internal static class Nobody
{
    public static Surroundings Around { get; } = new()
    {
        In = TextReader.Null,
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        Time = TimeProvider.System,
        Variable = _ => null,
    };
}
