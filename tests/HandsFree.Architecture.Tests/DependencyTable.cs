namespace HandsFree.Architecture.Tests;

/// <summary>Who may refer to whom. Changing the house means changing this table first.</summary>
internal static class DependencyTable
{
    public const string App = "HandsFree.App";

    /// <summary>Each project under src with the projects that it may refer to.</summary>
    public static readonly IReadOnlyDictionary<string, string[]> Allowed = new Dictionary<string, string[]>
    {
        ["HandsFree.Language"] = [],
        ["HandsFree.Audio"] = [],
        ["HandsFree.Core"] = ["HandsFree.Language"],
        ["HandsFree.Speech"] = ["HandsFree.Language", "HandsFree.Audio"],
        ["HandsFree.Store"] = ["HandsFree.Core"],
        ["HandsFree.Exchange"] = ["HandsFree.Core"],
        ["HandsFree.Pages"] = ["HandsFree.Core"],
        [App] = ["HandsFree.Language", "HandsFree.Core", "HandsFree.Audio", "HandsFree.Speech", "HandsFree.Store", "HandsFree.Exchange", "HandsFree.Pages"],
    };
}
