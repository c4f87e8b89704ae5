using System.Reflection;
using System.Runtime.InteropServices;

namespace HandsFree.Speech.Vosk;

/// <summary>The one libvosk of this process: the first file that loads stays.</summary>
internal static class VoskLibrary
{
    private static readonly Lock Gate = new();
    private static nint loaded;
    private static string? loadedFrom;

    /// <summary>Loads the library from a file, once.</summary>
    /// <returns>Null when it is loaded, else one line that says why not.</returns>
    internal static string? Load(string file)
    {
        string path = Path.GetFullPath(file);
        lock (Gate)
        {
            if (loaded != 0)
            {
                return path == loadedFrom ? null : $"libvosk is already loaded from {loadedFrom}; one process can't use {path} as well";
            }

            if (!File.Exists(path))
            {
                return $"libvosk is not installed ({path} was not found); run the set-up";
            }

            if (!NativeLibrary.TryLoad(path, out loaded))
            {
                return $"{path} is no library that this machine can load; run the set-up again";
            }

            loadedFrom = path;
            NativeLibrary.SetDllImportResolver(typeof(VoskLibrary).Assembly, Resolve);
            VoskNative.vosk_set_log_level(-2); // silent: its lines would land on the screen
            return null;
        }
    }

    private static nint Resolve(string name, Assembly assembly, DllImportSearchPath? search) => name == VoskNative.Library ? loaded : 0;
}
