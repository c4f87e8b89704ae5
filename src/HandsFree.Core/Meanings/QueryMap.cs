using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Language.Meaning;

namespace HandsFree.Core.Meanings;

/// <summary>From what a grammar's tags built to a question of the handover.</summary>
internal static class QueryMap
{
    /// <summary>The question; null where it is none of ours, or lacks what it asks about.</summary>
    /// <param name="text">What is asked.</param>
    /// <param name="record">All that the tags built.</param>
    public static Meaning.Query? From(string text, SemanticRecord record)
    {
        if (!Words.Queries.TryGetValue(text, out QueryKind kind))
        {
            return null;
        }

        int? room = record["room"] is SemanticNumber n && MeaningMap.IsRoom(n.Value) ? (int)n.Value : null;
        string? bed = room is not null && record["bed"] is SemanticText { Value: "a" or "b" or "c" or "d" } letter ? letter.Value : null;
        VitalSign? sign = text == "last pulse" ? VitalSign.Pulse : ReadingMap.Sign(record["kind"]);
        return kind switch
        {
            QueryKind.Room when room is null => null,
            QueryKind.LastValue when sign is null => null,
            QueryKind.Since => Since(record) is { } since ? new(kind, null) { Since = since } : null,
            QueryKind.LastValue => new(kind, room) { Bed = bed, Sign = sign },
            _ => new(kind, room) { Bed = bed },
        };
    }

    /// <summary>Who was told; null where it is nobody that can be told.</summary>
    public static Meaning.Query? Told(string whom) =>
        Whom.TryGetValue(whom, out Told told) ? new(QueryKind.Told, null) { Whom = told } : null;

    private static readonly IReadOnlyDictionary<string, Told> Whom = new Dictionary<string, Told>
    {
        ["nurse"] = Reports.Told.Nurse,
        ["prescriber"] = Reports.Told.Prescriber,
        ["family"] = Reports.Told.Family,
    };

    private static SinceSaid? Since(SemanticRecord record) => (record["shift"], record["clock"], record["hour"], record["minute"]) switch
    {
        (SemanticText { Value: "last" }, _, _, _) => new SinceSaid.Shift(IsLast: true),
        (SemanticText { Value: "this" }, _, _, _) => new SinceSaid.Shift(IsLast: false),
        (_, SemanticNumber { Value: 12m }, SemanticNumber { Value: >= 1 and <= 12 } hour, SemanticNumber { Value: >= 0 and <= 59 } minute) =>
            new SinceSaid.Clock((int)hour.Value, (int)minute.Value, OfTwelve: true),
        (_, SemanticNumber { Value: 24m }, SemanticNumber { Value: >= 0 and <= 23 } hour, SemanticNumber { Value: >= 0 and <= 59 } minute) =>
            new SinceSaid.Clock((int)hour.Value, (int)minute.Value, OfTwelve: false),
        _ => null,
    };
}
