using HandsFree.Core.Observations;

namespace HandsFree.Core.Rules;

/// <summary>The rules in force: a pure function from a reading and what is known to a decision.</summary>
public interface IRulebook
{
    /// <summary>SHA-256 in hex of the rule content, kept with each decision.</summary>
    string Hash { get; }

    /// <summary>Decides one reading: entry limits, method, ordered limits, home limits, defaults. An order replaces the limits below it on
    /// its side of its value; of what then applies the worst wins.</summary>
    Decision Decide(Reading reading, DecisionContext context);
}
