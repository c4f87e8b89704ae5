using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Scores;

namespace HandsFree.App.RuleDesk;

/// <summary>A set that was tried, as one JSON object on one line.</summary>
internal static class TriedSetJson
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Decision, whether a recheck comes first, reasons; then the same for each reading.</summary>
    public static string Of(TriedSet set) => JsonSerializer.Serialize(
        new
        {
            reading = string.Join("; ", set.Readings.Select(r => r.Words)),
            decision = set.Word,
            recheckFirst = set.RecheckFirst,
            recheck = Recheck(set.RecheckFirst ? set.Makers[0].Decision.Recheck : null),
            danger = set.Danger,
            reasons = set.Reasons.Select(Reason),
            readings = set.Readings.Select(r => new
            {
                reading = r.Words,
                decision = r.Word,
                recheckFirst = r.Decision.Recheck is not null,
                recheck = Recheck(r.Decision.Recheck),
                danger = r.Decision.Danger,
                reasons = r.Decision.Reasons.Select(Reason),
            }),
            news2 = set.News2 is { } parameters
                ? new { total = News2.Of(parameters)?.Total, @class = News2.Of(parameters)?.Class, missing = News2Set.Missing(parameters), source = News2Set.Source }
                : null,
        },
        Options);

    private static object? Recheck(Recheck? recheck) =>
        recheck is null ? null : new { rule = recheck.Rule, instruction = recheck.Instruction, afterMinutes = recheck.After.TotalMinutes };

    private static object Reason(Reason reason) =>
        new { rule = reason.Rule, source = reason.Source, text = reason.Text, mark = EnumWords.Of(reason.Mark), outcome = EnumWords.Of(reason.Outcome) };
}
