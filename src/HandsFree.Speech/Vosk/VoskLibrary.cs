using System.Reflection;
using System.Runtime.InteropServices;
using HandsFree.Audio.Runtime;

namespace HandsFree.Speech.Vosk;

/// <summary>The one libvosk of this process: the first file that loads stays.</summary>
internal static class VoskLibrary
{
    /// <summary>Of libvosk.so, libvosk.dylib and libvosk.dll in the npm package vosk 0.3.39.</summary>
    private static readonly string[] Sha256 =
    [
        "9f94ef218c32e271ae8ac84065ab25191af48832c06c6e624984b1c80f0b0920",
        "82fdfba0dde392a7dbba70f9c1a17f6e3da27a50444a9f53939508525a1e6fdf",
        "9ee0301e8c29ba7e2219e99664bcb687fe2575d0379b76b3d0be39ccc0112038",
    ];

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

            if (KnownFile.WhyNot(path, Sha256) is { } unknown)
            {
                return $"{unknown}; run the set-up again";
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
