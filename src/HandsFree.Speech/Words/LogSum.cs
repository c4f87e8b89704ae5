namespace HandsFree.Speech.Words;

/// <summary>Adding in the log semiring.</summary>
internal static class LogSum
{
    /// <summary>ln(e^a + e^b); either may be minus infinity.</summary>
    internal static double Of(double a, double b)
    {
        if (a < b)
        {
            (a, b) = (b, a);
        }

        return double.IsNegativeInfinity(b) ? a : a + Math.Log(1 + Math.Exp(b - a));
    }
}
