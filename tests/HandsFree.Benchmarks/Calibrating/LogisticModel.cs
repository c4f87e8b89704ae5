using HandsFree.Speech.Posterior;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>The facts that an engine's posterior weighs, and the maximum-likelihood weights of a multinomial logistic model: each row's
/// classes are its values and "none of these" (Newton's method, with a penalty on the squared distance from the starting weights so that few
/// recordings can't make extreme ones).</summary>
/// <param name="Value">Facts of a value, with the starting weight.</param>
/// <param name="None">Facts of the utterance, for "none of these", with the starting weight.</param>
internal sealed record LogisticModel(IReadOnlyDictionary<string, double> Value, IReadOnlyDictionary<string, double> None)
{
    private const double Penalty = 0.3;
    private const int MostSteps = 25;
    private const double LongestStep = 2;
    private const double Settled = 1e-4;

    /// <summary>What each engine measures and its posterior weighs.</summary>
    public static IReadOnlyDictionary<string, LogisticModel> OfEngines { get; } = new Dictionary<string, LogisticModel>
    {
        ["vosk"] = new(
            new Dictionary<string, double> { [Facts.Score] = 1 },
            new Dictionary<string, double> { [Facts.Bias] = 0, [Facts.Outside] = 1 }),
    };

    private int Size => Value.Count + None.Count;

    private double[] Start => [.. Value.Values, .. None.Values];

    /// <summary>The weights that make what happened likeliest.</summary>
    public double[] Fit(IReadOnlyCollection<EvidenceRow> rows)
    {
        (double[][] Classes, int Truth)[] data = [.. rows.Where(r => r.Values.Count > 0).Select(Classes)];
        double[] start = Start;
        double[] weights = [.. start];
        for (int step = 0; step < MostSteps; step++)
        {
            double[] gradient = [.. weights.Select((w, i) => Penalty * (start[i] - w))];
            double[,] curvature = new double[Size, Size];
            for (int i = 0; i < Size; i++)
            {
                curvature[i, i] = Penalty;
            }

            foreach (var (classes, truth) in data)
            {
                Add(classes, truth, weights, gradient, curvature);
            }

            double[] move = LinearSystem.Solve(curvature, gradient);
            double longest = move.Max(Math.Abs);
            for (int i = 0; i < Size; i++)
            {
                weights[i] += move[i] * Math.Min(1, LongestStep / longest);
            }

            if (longest < Settled)
            {
                break;
            }
        }

        return weights;
    }

    /// <summary>The parameters that these weights are.</summary>
    public PosteriorParameters Parameters(double[] weights, double leastProbability, System.Text.Json.Nodes.JsonObject run)
    {
        return new(PosteriorParameters.CurrentVersion, run, leastProbability, Named(Value, weights), Named(None, weights[Value.Count..]));

        static Dictionary<string, double> Named(IReadOnlyDictionary<string, double> names, double[] weights) =>
            names.Keys.Zip(weights).ToDictionary(p => p.First, p => Math.Round(p.Second, 3));
    }

    private static void Add(double[][] classes, int truth, double[] weights, double[] gradient, double[,] curvature)
    {
        double[] logs = [.. classes.Select(c => c.Zip(weights, (x, w) => x * w).Sum())];
        double most = logs.Max();
        double total = logs.Sum(log => Math.Exp(log - most));
        double[] shares = [.. logs.Select(log => Math.Exp(log - most) / total)];
        double[] mean = [.. weights.Select((_, i) => classes.Zip(shares, (c, p) => p * c[i]).Sum())];
        for (int i = 0; i < weights.Length; i++)
        {
            gradient[i] += classes[truth][i] - mean[i];
            for (int j = 0; j < weights.Length; j++)
            {
                for (int k = 0; k < classes.Length; k++)
                {
                    curvature[i, j] += shares[k] * (classes[k][i] - mean[i]) * (classes[k][j] - mean[j]);
                }
            }
        }
    }

    /// <summary>"None of these" first; the truth is the value that was meant, or that.</summary>
    private (double[][] Classes, int Truth) Classes(EvidenceRow row)
    {
        double[] none = [.. Value.Keys.Select(_ => 0.0), .. None.Keys.Select(name => row.Facts[name])];
        double[][] values = [.. row.Values.Select(v => (double[])[.. Value.Keys.Select(name => v.Facts[name]), .. None.Keys.Select(_ => 0.0)])];
        return ([none, .. values], row.Values.ToList().FindIndex(v => v.Right) + 1);
    }
}
