namespace HandsFree.Core.Hearings;

/// <summary>One value that was said twice is decided by both hearings together.</summary>
/// <remarks>
/// Two hearings of the same value are independent evidence, so their odds multiply (Bayes' rule, no value likelier than another
/// beforehand). With p1 and p2 for the probabilities in the two hearings, n1 and n2 for "none of these":
/// <code>
/// w(v)    = p1(v) * p2(v)         for each value v of either hearing that was not refused
/// w(none) = n1 * n2
/// p(v)    = w(v) / (w(none) + sum of all w)
/// </code>
/// A value that one hearing does not list has there at most what "none of these" has, and at most what the least of the listed has; that
/// bound is used, so that two hearings that contradict each other end with a small margin and never with a sure value. A value that
/// was read back and refused is not what was said: it is left out before the sum.
/// </remarks>
public static class TwoHearings
{
    /// <summary>What both hearings together say, likeliest first; equally likely values in the order of the hearings. What the
    /// probabilities lack to 1 is "none of these". A hearing without values changes nothing.</summary>
    /// <typeparam name="T">What values are compared by.</typeparam>
    /// <param name="first">The first hearing's values; each once, probabilities of 0 to 1 whose sum is at most 1.</param>
    /// <param name="second">The second hearing's.</param>
    /// <param name="refused">Values that were read back and refused.</param>
    /// <exception cref="ArgumentException">Probabilities that can't be, or a value that is there twice: says which.</exception>
    public static IReadOnlyList<Possible<T>> Together<T>(
        IReadOnlyList<Possible<T>> first, IReadOnlyList<Possible<T>> second, IReadOnlyCollection<T> refused)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(refused);
        One<T> a = new(first, nameof(first));
        One<T> b = new(second, nameof(second));
        Possible<T>[] weights = [.. first.Concat(second)
            .Select(p => p.Value)
            .Distinct()
            .Where(value => !refused.Contains(value))
            .Select(value => new Possible<T>(value, a.Of(value) * b.Of(value)))];
        double total = (a.None * b.None) + weights.Sum(w => w.Probability);
        return total > 0
            ? [.. weights.Select(w => w with { Probability = w.Probability / total }).OrderByDescending(w => w.Probability)]
            : [.. weights];
    }

    /// <summary>Difference of the log probabilities of the best and the next value (natural logarithm), 0 or more; null without two
    /// values of which the next is possible at all.</summary>
    /// <typeparam name="T">What values are compared by.</typeparam>
    /// <param name="values">Likeliest first.</param>
    public static double? Margin<T>(IReadOnlyList<Possible<T>> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.Count > 1 && values[1].Probability > 0 ? Math.Log(values[0].Probability / values[1].Probability) : null;
    }

    /// <summary>One hearing's probabilities.</summary>
    private sealed class One<T>
        where T : notnull
    {
        private const double Rounding = 1e-9;
        private readonly Dictionary<T, double> listed = [];
        private readonly double unlisted;

        public One(IReadOnlyList<Possible<T>> hearing, string name)
        {
            ArgumentNullException.ThrowIfNull(hearing, name);
            double sum = 0;
            foreach (var (value, probability) in hearing)
            {
                if (!(probability is >= 0 and <= 1))
                {
                    throw new ArgumentException(FormattableString.Invariant($"{value} has the probability {probability}; it must be 0 to 1."), name);
                }

                if (!listed.TryAdd(value, probability))
                {
                    throw new ArgumentException($"{value} is there twice; add its probabilities.", name);
                }

                sum += probability;
            }

            if (sum > 1 + Rounding)
            {
                throw new ArgumentException(FormattableString.Invariant($"The probabilities add up to {sum}; more than 1 can't be."), name);
            }

            None = Math.Max(0, 1 - sum);
            unlisted = Math.Min(None, hearing.Count == 0 ? 1 : hearing.Min(p => p.Probability));
        }

        public double None { get; }

        public double Of(T value) => listed.GetValueOrDefault(value, unlisted);
    }
}
