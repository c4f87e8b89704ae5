using System.Numerics;

namespace HandsFree.Speech.Neural;

/// <summary>The logits of one row as natural log probabilities, computed only where they are asked for.</summary>
internal readonly ref struct LogSoftmax
{
    private readonly ReadOnlySpan<float> logits;
    private readonly double normaliser;

    /// <summary>Finds the exact normaliser and the likeliest token.</summary>
    public LogSoftmax(ReadOnlySpan<float> logits)
    {
        this.logits = logits;
        Best = IndexOfMost(logits);
        float most = logits[Best];
        normaliser = most + Math.Log(SumOfExponentials(logits, most));
    }

    /// <summary>The likeliest token.</summary>
    public int Best { get; }

    /// <summary>The likeliest token but one that is ruled out.</summary>
    public int BestBut(int ruledOut)
    {
        int best = IndexOfMost(logits[..ruledOut]);
        int later = ruledOut + 1 + IndexOfMost(logits[(ruledOut + 1)..]);
        return logits[later] > logits[best] ? later : best;
    }

    /// <summary>The log probability of a token.</summary>
    public double this[int token] => logits[token] - normaliser;

    private static double SumOfExponentials(ReadOnlySpan<float> logits, float most)
    {
        var shift = new Vector<float>(most);
        double sum = 0;
        int at = 0;
        for (; at <= logits.Length - Vector<float>.Count; at += Vector<float>.Count)
        {
            Vector<float> exponentials = Vector.Exp(new Vector<float>(logits[at..]) - shift);
            Vector.Widen(exponentials, out Vector<double> low, out Vector<double> high);
            sum += Vector.Sum(low + high);
        }

        for (; at < logits.Length; at++)
        {
            sum += MathF.Exp(logits[at] - most);
        }

        return sum;
    }

    private static int IndexOfMost(ReadOnlySpan<float> values)
    {
        var most = new Vector<float>(float.NegativeInfinity);
        int at = 0;
        for (; at <= values.Length - Vector<float>.Count; at += Vector<float>.Count)
        {
            most = Vector.Max(most, new Vector<float>(values[at..]));
        }

        float highest = float.NegativeInfinity;
        for (int i = 0; i < Vector<float>.Count; i++)
        {
            highest = Math.Max(highest, most[i]);
        }

        foreach (float value in values[at..])
        {
            highest = Math.Max(highest, value);
        }

        return values.IndexOf(highest);
    }
}
