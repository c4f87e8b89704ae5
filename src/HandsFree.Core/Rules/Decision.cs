using System.Text.Json.Serialization;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules;

/// <summary>What the rules say of one reading.</summary>
/// <param name="Outcome">The worst of what applies.</param>
/// <param name="Recheck">The recheck that comes first, or null. With <see cref="Outcome.Accept"/> a recheck is asked for doubt alone.</param>
/// <param name="Reasons">Every rule that spoke, the weightiest first; equal ones are all listed.</param>
/// <param name="Danger">The value is a danger value: "use the call light now" at the first hearing, before any read-back.</param>
/// <param name="RulesHash">SHA-256 in hex of the rule content that decided.</param>
public sealed record Decision(Outcome Outcome, Recheck? Recheck, IReadOnlyList<Reason> Reasons, bool Danger, string RulesHash)
{
    /// <summary>The nurse's plans for which this reading is not reported. Not kept in the journal; the reasons are.</summary>
    [JsonIgnore]
    public IReadOnlyList<OrderedLimit> SilencedBy { get; init; } = [];

    /// <summary>All rules that ask for the recheck; <see cref="Recheck"/> is the one whose instruction is said. Not kept in the journal.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> RecheckAskedBy { get; init; } = [];
}
