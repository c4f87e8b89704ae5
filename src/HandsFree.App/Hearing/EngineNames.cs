namespace HandsFree.App.Hearing;

/// <summary>The engines by the names that the command line and home.json use, the best first.</summary>
internal static class EngineNames
{
    public const string Words = "words";

    public const string Neural = "neural";

    public const string Vosk = "vosk";

    public const string Sphinx = "sphinx";

    public const string Small = "small";

    public static IReadOnlyList<string> All { get; } = [Words, Neural, Vosk, Small, Sphinx];
}
