using System.Runtime.InteropServices;

namespace HandsFree.Speech.Sphinx;

/// <summary>Looks whether PocketSphinx and its model are on this machine.</summary>
internal static class SphinxInstallation
{
    internal static string? WhyNot(SphinxOptions options)
    {
        if (!OperatingSystem.IsLinux())
        {
            return "sphinx is available on Linux only (Debian's libpocketsphinx3)";
        }

        foreach (string library in (string[])[SphinxNative.Library, SphinxNative.BaseLibrary])
        {
            if (!NativeLibrary.TryLoad(library, typeof(SphinxInstallation).Assembly, null, out _))
            {
                return $"PocketSphinx is not installed ({library} was not found); install the package libpocketsphinx3";
            }
        }

        string[] files = [Path.Combine(options.AcousticModel, "mdef"), Path.Combine(options.AcousticModel, "means"), options.Dictionary];
        string? missing = files.FirstOrDefault(file => new FileInfo(file) is not { Exists: true, Length: > 0 });
        return missing is null ? null : $"PocketSphinx has no English model ({missing} was not found); install the package pocketsphinx-en-us";
    }
}
