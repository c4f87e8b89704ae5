namespace HandsFree.Benchmarks.Calibrating;

/// <summary>Linear equations by Gaussian elimination with partial pivoting.</summary>
internal static class LinearSystem
{
    /// <summary>The x of a x = b; a must not be singular.</summary>
    public static double[] Solve(double[,] a, double[] b)
    {
        int n = b.Length;
        double[,] m = (double[,])a.Clone();
        double[] x = [.. b];
        for (int i = 0; i < n; i++)
        {
            int pivot = Enumerable.Range(i, n - i).MaxBy(k => Math.Abs(m[k, i]));
            for (int j = 0; j < n; j++)
            {
                (m[i, j], m[pivot, j]) = (m[pivot, j], m[i, j]);
            }

            (x[i], x[pivot]) = (x[pivot], x[i]);
            for (int k = i + 1; k < n; k++)
            {
                double factor = m[k, i] / m[i, i];
                for (int j = i; j < n; j++)
                {
                    m[k, j] -= factor * m[i, j];
                }

                x[k] -= factor * x[i];
            }
        }

        for (int i = n - 1; i >= 0; i--)
        {
            x[i] = (x[i] - Enumerable.Range(i + 1, n - i - 1).Sum(j => m[i, j] * x[j])) / m[i, i];
        }

        return x;
    }
}
