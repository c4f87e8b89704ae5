namespace HandsFree.Speech.Words;

/// <summary>From the network's logits to probabilities.</summary>
internal static class Rows
{
    /// <summary>Makes each row natural logarithms of probabilities that sum to one, in place.</summary>
    /// <param name="values">Rows.</param>
    /// <param name="width">Values of one row.</param>
    /// <param name="temperature">What the logits are divided by; above 1 for a network that is too sure.</param>
    internal static void ToLogProbabilities(Span<float> values, int width, double temperature)
    {
        for (int start = 0; start < values.Length; start += width)
        {
            Span<float> row = values.Slice(start, width);
            double most = double.NegativeInfinity;
            foreach (float v in row)
            {
                most = Math.Max(most, v / temperature);
            }

            double sum = 0;
            foreach (float v in row)
            {
                sum += Math.Exp((v / temperature) - most);
            }

            double log = most + Math.Log(sum);
            for (int i = 0; i < width; i++)
            {
                row[i] = (float)((row[i] / temperature) - log);
            }
        }
    }
}
