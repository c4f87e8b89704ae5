namespace HandsFree.Benchmarks.Statistics;

/// <summary>Whether two runs over the same recordings differ by more than chance: the recordings that only one of them got wrong are held against
/// a fair coin (McNemar 1947, Psychometrika 12; in its exact form, the sign test).</summary>
internal static class SignTest
{
    /// <summary>Two-sided probability that a fair coin would part the recordings as unevenly, 0 to 1; 1 where none differ.</summary>
    /// <param name="onlyFirst">Recordings of which something holds only in the first run.</param>
    /// <param name="onlySecond">Only in the second run.</param>
    public static double Probability(int onlyFirst, int onlySecond)
    {
        int all = onlyFirst + onlySecond;
        double sum = 0;
        double term = -all * Math.Log(2);
        for (int k = 0; k <= Math.Min(onlyFirst, onlySecond); k++)
        {
            sum += Math.Exp(term);
            term += Math.Log(all - k) - Math.Log(k + 1);
        }

        return Math.Min(1, 2 * sum);
    }
}
