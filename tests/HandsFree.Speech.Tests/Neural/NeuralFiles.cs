using HandsFree.TestKit;

namespace HandsFree.Speech.Tests.Neural;

/// <summary>The neural model of the machine; a test that asks is skipped where it is missing.</summary>
internal static class NeuralFiles
{
    public static string Folder => Shared.Model("moonshine-base-en");

    /// <summary>Prepared once, kept beside what set-up fetched.</summary>
    public static string Cache => Path.Combine(Environment.GetEnvironmentVariable("HANDSFREE_TOOLS") is { Length: > 0 } tools
        ? tools : Path.Combine(Shared.Repository, ".handsfree"), "cache");
}
