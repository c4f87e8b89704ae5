using System.Collections.Concurrent;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.TestKit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Understands written sentences through the grammars of the repository, as the state in force listens.</summary>
internal static class Ears
{
    private static readonly ConcurrentDictionary<(string File, string? Rule), Grammar> Loaded = new();

    /// <summary>What the sentence means in that state; null where the state does not listen for it.</summary>
    public static Meaning? Understand(Listening listening, string sentence) =>
        Grammars(listening).SelectMany(g => Matcher.Match(g, sentence)).Select(v => MeaningMap.From(v)).FirstOrDefault(m => m is not null);

    private static IEnumerable<Grammar> Grammars(Listening listening)
    {
        string? sign = listening.Awaited is { } awaited ? Rule(awaited) : null;
        return listening.Kind switch
        {
            ListeningKind.Nothing => [],
            ListeningKind.Commands => [Load("phrases", "paused")],
            ListeningKind.Identity => [Load("identity"), Load("handover", "question")],
            ListeningKind.SecondIdentifier => [Load("identity", "second")],
            ListeningKind.YesNo => [Load("confirmation", "yes_no")],
            ListeningKind.NowOrBefore => [Load("confirmation", "now_or_before")],
            ListeningKind.Readings => sign is null ? [Load("readings")] : [Load("readings"), Load("value", sign)],
            ListeningKind.Value => [Load("value", sign), Load("readings"), Load("confirmation", sign)],
            ListeningKind.Confirmation => [Load("confirmation", sign), Load("readings")],
            ListeningKind.Count => [Load("count")],
            ListeningKind.Handover => [Load("handover")],
            _ => throw new ArgumentOutOfRangeException(nameof(listening), listening.Kind, "no such grammar"),
        };
    }

    private static string Rule(VitalSign sign) => sign switch
    {
        VitalSign.BloodPressure => "pressure",
        VitalSign.OxygenSaturation => "oxygen",
        _ => sign.ToString().ToLowerInvariant(),
    };

    private static Grammar Load(string file, string? rule = null) =>
        Loaded.GetOrAdd((file, rule), key => Grammar.Load(Path.Combine(Shared.Repository, "grammars", key.File + ".jsgf"), key.Rule));
}
