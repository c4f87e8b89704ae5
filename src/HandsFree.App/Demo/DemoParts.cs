using HandsFree.App.Demo.Script;
using HandsFree.App.Homes;
using HandsFree.Speech;

namespace HandsFree.App.Demo;

/// <summary>What a demo was started with.</summary>
/// <param name="Manifest">The script.</param>
/// <param name="Clips">The recordings.</param>
/// <param name="Home">The made-up home.</param>
/// <param name="Recognizer">The engine.</param>
internal sealed record DemoParts(DemoManifest Manifest, ClipShelf Clips, Home Home, IRecognizer Recognizer)
{
    /// <summary>The folder of the recordings, in the checkout and beside the program.</summary>
    public const string FolderName = "demo-audio-synthetic";
}
