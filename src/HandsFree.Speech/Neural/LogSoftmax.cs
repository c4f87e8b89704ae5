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
        double sum = 0;
        foreach (float logit in logits)
        {
            sum += MathF.Exp(logit - most);
        }

        normaliser = most + Math.Log(sum);
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

    private static int IndexOfMost(ReadOnlySpan<float> values)
    {
        int most = 0;
        for (int i = 1; i < values.Length; i++)
        {
            most = values[i] > values[most] ? i : most;
        }

        return most;
    }
}
