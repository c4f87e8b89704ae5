using HandsFree.TestKit;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>The browser's fonts: those of the pages and no others, so that a picture is the same on every machine.</summary>
internal static class Fonts
{
    private static readonly Lazy<string> Written = new(() =>
    {
        string folder = Directory.CreateTempSubdirectory("handsfree-fonts-").FullName;
        string file = Path.Combine(folder, "fonts.conf");
        File.WriteAllText(file, $"""
            <?xml version="1.0"?>
            <fontconfig>
              <dir>{Path.Combine(Shared.Repository, "src", "HandsFree.Pages", "Fonts")}</dir>
              <cachedir>{folder}</cachedir>
            </fontconfig>

            """);
        return file;
    });

    /// <summary>A configuration file of fontconfig.</summary>
    public static string Configuration => Written.Value;
}
