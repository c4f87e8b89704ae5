using System.Runtime.InteropServices;

namespace HandsFree.Speech.Sphinx;

/// <summary>Looks whether PocketSphinx and its model are on this machine.</summary>
internal static class SphinxInstallation
{
    private static readonly string[] Acoustic = ["mdef", "feat.params", "means", "variances", "transition_matrices"];
    private static readonly string[] Beginnings = ["BMDF", "-", "s3", "s3", "s3"];

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

        string? missing = Needed(options).FirstOrDefault(file => new FileInfo(file) is not { Exists: true, Length: > 0 });
        return missing is not null
            ? $"PocketSphinx has no English model ({missing} was not found); install the package pocketsphinx-en-us"
            : Damaged(options) is { } damaged
                ? $"PocketSphinx's model is damaged ({damaged}); install the package pocketsphinx-en-us again"
                : null;
    }

    private static IEnumerable<string> Needed(SphinxOptions options) =>
        [.. Acoustic.Select(name => Path.Combine(options.AcousticModel, name)), options.Dictionary];

    /// <summary>The first file whose beginning is not what it should be: on such a file the library ends the process.</summary>
    private static string? Damaged(SphinxOptions options) => Acoustic
        .Zip(Beginnings, (name, beginning) => (File: Path.Combine(options.AcousticModel, name), Beginning: beginning))
        .Where(model => !Starts(model.File, model.Beginning))
        .Select(model => model.File)
        .FirstOrDefault();

    private static bool Starts(string file, string beginning)
    {
        using FileStream stream = File.OpenRead(file);
        var head = new byte[beginning.Length];
        return stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length
            && System.Text.Encoding.ASCII.GetString(head) == beginning;
    }
}
