namespace HandsFree.App.Composition;

/// <summary>Where things lie on this machine: what the environment says, else what the platform's convention says.</summary>
internal sealed class ProgramPaths(Surroundings surroundings)
{
    private const string Name = "handsfree";

    /// <summary>What set-up fetched: HANDSFREE_TOOLS, else what an installed program brings, else .handsfree in the checkout that the
    /// program was built in, else the data folder.</summary>
    public string Tools { get; } = surroundings.Variable("HANDSFREE_TOOLS")
        ?? Beside(surroundings.ProgramFolder)
        ?? OfCheckout(surroundings.ProgramFolder)
        ?? Path.Combine(Data(surroundings), "tools");

    /// <summary>Folders that may hold models, the first one first: HANDSFREE_MODELS, then what set-up fetched.</summary>
    public IReadOnlyList<string> Models =>
        surroundings.Variable("HANDSFREE_MODELS") is { } own ? [own, Path.Combine(Tools, "models")] : [Path.Combine(Tools, "models")];

    /// <summary>What to do where something that set-up fetches is missing; an installed program has no set-up, all is in it.</summary>
    public string FetchAgain { get; } = OfCheckout(surroundings.ProgramFolder) is null ? "install HandsFree again: a part of it is missing"
        : OperatingSystem.IsWindows() ? @"run scripts\setup.ps1 -Again"
        : "run scripts/setup.sh --again";

    /// <summary>The grammars.</summary>
    public string Grammars => Path.Combine(surroundings.ProgramFolder, "grammars");

    /// <summary>The library of the engine vosk.</summary>
    public string VoskLibrary => Path.Combine(
        Tools, "vosk", OperatingSystem.IsWindows() ? "libvosk.dll" : OperatingSystem.IsMacOS() ? "libvosk.dylib" : "libvosk.so");

    /// <summary>The model of the speech detector.</summary>
    public string Detector => Path.Combine(Tools, "vad", "silero_vad_v6.onnx");

    /// <summary>The home's folder where none is named: HANDSFREE_HOME, else "home" in the data folder.</summary>
    public string Home => surroundings.Variable("HANDSFREE_HOME") ?? Path.Combine(Data(surroundings), "home");

    /// <summary>Where this device keeps the secrets of journals: HANDSFREE_STATE, else the user's state folder.</summary>
    public string States => surroundings.Variable("HANDSFREE_STATE") ?? Path.Combine(
        OperatingSystem.IsWindows()
            ? surroundings.Variable("LOCALAPPDATA") ?? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : surroundings.Variable("XDG_STATE_HOME") ?? Path.Combine(UserFolder(surroundings), ".local", "state"),
        Name);

    private static string Data(Surroundings surroundings) => Path.Combine(
        OperatingSystem.IsWindows()
            ? surroundings.Variable("LOCALAPPDATA") ?? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) // never the roaming one: a record is not copied to other machines
            : surroundings.Variable("XDG_DATA_HOME") ?? Path.Combine(UserFolder(surroundings), ".local", "share"),
        Name);

    private static string UserFolder(Surroundings surroundings) =>
        surroundings.Variable("HOME") ?? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);

    private static string? Beside(string programFolder) =>
        Path.Combine(programFolder, "tools") is var tools && Directory.Exists(tools) ? tools : null;

    private static string? OfCheckout(string programFolder)
    {
        for (DirectoryInfo? at = new(programFolder); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "HandsFree.sln")))
            {
                return Path.Combine(at.FullName, ".handsfree");
            }
        }

        return null;
    }

    private static bool CanWrite(string folder)
    {
        try
        {
            using FileStream trial = new(
                Path.Combine(folder, $".trial-{Environment.ProcessId}"), FileMode.Create, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
