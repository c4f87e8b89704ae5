namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>What must hold did not.</summary>
/// <param name="what">In words.</param>
internal sealed class FaultMissedException(string what) : Exception(what)
{
    /// <summary>Throws where it does not hold.</summary>
    public static void Unless(bool holds, string what)
    {
        if (!holds)
        {
            throw new FaultMissedException(what);
        }
    }
}
