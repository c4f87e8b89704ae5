namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>How often something is tried, and how long the pauses between grow.</summary>
/// <param name="First">The first pause; each is twice as long as the one before.</param>
/// <param name="Longest">None is longer, whatever a server asks for.</param>
/// <param name="Tries">How often it is tried in all.</param>
public sealed record Pauses(TimeSpan First, TimeSpan Longest, int Tries)
{
    /// <summary>1, 2, 4, 8, 16 seconds; six tries; at most five minutes where the server asks for more.</summary>
    public static Pauses Usual { get; } = new(TimeSpan.FromSeconds(1), TimeSpan.FromMinutes(5), 6);

    /// <summary>The pause after a try.</summary>
    /// <param name="tried">How often it was tried, from 1.</param>
    /// <param name="asked">What the server asks for, or null.</param>
    public TimeSpan After(int tried, TimeSpan? asked)
    {
        TimeSpan own = First * Math.Pow(2, tried - 1);
        TimeSpan longer = asked > own ? asked.Value : own;
        return longer < Longest ? longer : Longest;
    }
}
