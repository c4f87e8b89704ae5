using System.Security.Cryptography;
using System.Text;
using HandsFree.App.Composition;
using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>What a hearing depends on beside sound and grammar, as a short text: another program, model or grammar file gives another.</summary>
internal static class Stamp
{
    /// <summary>The stamp of an engine here.</summary>
    public static string Of(string engine, ProgramPaths paths)
    {
        StringBuilder text = new(engine);
        foreach (Type part in (Type[])[typeof(IRecognizer), typeof(Grammar)])
        {
            // The builds are deterministic: the id of a module changes with its sources alone.
            text.Append(' ').Append(part.Module.ModuleVersionId);
        }

        foreach (string folder in paths.Models.Where(Directory.Exists).Order(StringComparer.Ordinal))
        {
            foreach (FileInfo file in new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).OrderBy(f => f.FullName, StringComparer.Ordinal))
            {
                text.Append(' ').Append(file.Name).Append(file.Length);
            }
        }

        foreach (string grammar in Directory.EnumerateFiles(paths.Grammars, "*.jsgf").Order(StringComparer.Ordinal))
        {
            text.Append(File.ReadAllText(grammar));
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..16];
    }
}
