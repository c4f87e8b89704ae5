using HandsFree.Core.Dialogue;
using HandsFree.Core.Observations;
using HandsFree.Core.Rules;

namespace HandsFree.App.RuleDesk;

/// <summary>A reading with what would be decided of it.</summary>
internal sealed record TriedReading(Reading Reading, Decision Decision)
{
    /// <summary>The reading as it is read back.</summary>
    public string Words => ReadBackTexts.Of(Reading);

    /// <summary>One of "accept", "recheck", "ask again", "report this shift", "report now".</summary>
    public string Word => DecisionWord.Of(Decision);
}
