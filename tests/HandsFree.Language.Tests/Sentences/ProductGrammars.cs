using System.Collections.Concurrent;
using HandsFree.Language.Grammars;
using HandsFree.TestKit;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>The grammars of the product, each read once.</summary>
internal static class ProductGrammars
{
    private static readonly ConcurrentDictionary<(string, string?), Lazy<Grammar>> Loaded = new();

    private static readonly string[] Kinds = ["temperature", "pulse", "respirations", "pressure", "oxygen", "weight", "pain"];

    /// <summary>Every grammar and rule that is listened for in some state of the dialogue.</summary>
    public static TheoryData<string, string?> Listened => [.. All.Select(l => new TheoryDataRow<string, string?>(l.Grammar, l.Rule))];

    public static IEnumerable<(string Grammar, string? Rule)> All =>
    [
        ("readings", null), ("value", null), ("confirmation", null), ("confirmation", "yes_no"), ("confirmation", "now_or_before"),
        ("count", null), ("handover", null), ("identity", null), ("identity", "second"), ("phrases", "command"),
        .. Kinds.Select(k => ("value", (string?)k)),
        .. Kinds.Select(k => ("confirmation", (string?)k)),
        .. Kinds.Select(k => ("recheck", (string?)k)),
    ];

    public static string Folder => Path.Combine(Shared.Repository, "grammars");

    public static Grammar Load(string grammar, string? rule = null) =>
        Loaded.GetOrAdd((grammar, rule), key => new(() => Grammar.Load(Path.Combine(Folder, key.Item1 + ".jsgf"), key.Item2))).Value;
}
