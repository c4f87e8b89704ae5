using HandsFree.Language.Grammars;

namespace HandsFree.Benchmarks;

/// <summary>What the user can put right is told in one line; anything else is a fault of the program and shows itself.</summary>
internal static class Failures
{
    private const int CouldNot = 2;

    /// <summary>Runs; 2 with a line on the error stream where the input is at fault.</summary>
    public static int Told(TextWriter error, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (Exception e) when (e is InvalidDataException or GrammarException or IOException or UnauthorizedAccessException)
        {
            error.WriteLine(e.Message);
            return CouldNot;
        }
    }
}
