namespace HandsFree.App.Hearing;

/// <summary>The engines by the names that the command line and home.json use, the best first.</summary>
internal static class EngineNames
{
    /// <summary>Built in.</summary>
    public const string Words = "words";

    /// <summary>Only by name: its model is the user's download, and nobody has measured it here.</summary>
    public const string Vosk = "vosk";

    public static IReadOnlyList<string> All { get; } = [Words, Vosk];
}
