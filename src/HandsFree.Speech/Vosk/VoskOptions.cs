namespace HandsFree.Speech.Vosk;

/// <summary>Where Vosk finds its library and its model.</summary>
/// <param name="ModelFolder">An unpacked model with a dynamic graph (graph/HCLr.fst and graph/Gr.fst): without it there are no grammars.</param>
public sealed record VoskOptions(string ModelFolder)
{
    /// <summary>The library's file; where the set-up puts it unless told otherwise.</summary>
    public string LibraryFile { get; init; } = Path.Combine(
        ".handsfree", "vosk", OperatingSystem.IsWindows() ? "libvosk.dll" : OperatingSystem.IsMacOS() ? "libvosk.dylib" : "libvosk.so");

    /// <summary>How many alternatives are asked for, 1 to 50.</summary>
    public int Alternatives { get; init; } = 10;

    /// <summary>What the score differences of two alternatives are multiplied by to be differences of log probabilities (natural).
    /// Not calibrated: 0.25 is a guess on the careful side, because the product's English model is the user's download.</summary>
    public double ScoreScale { get; init; } = 0.25;
}
