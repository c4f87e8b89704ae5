using HandsFree.TestKit;
using System.Runtime.CompilerServices;
using Xunit;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>Holds a picture against one that a person looked at. UPDATE_GOLDEN=1 writes it anew: look at it.</summary>
internal static class Approved
{
    private const double GreysApart = 24;
    private const double ShareAllowed = 0.004;

    public static void Match(string picture, string name, [CallerFilePath] string file = "")
    {
        string approved = Path.Combine(Path.GetDirectoryName(file)!, "Approved", name + ".png");
        if (Golden.Updates)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.Copy(picture, approved, overwrite: true);
            return;
        }

        Assert.True(File.Exists(approved), $"missing {approved}; look at {picture} and run once with UPDATE_GOLDEN=1");
        GreyPicture wanted = GreyPicture.Read(approved);
        GreyPicture found = GreyPicture.Read(picture);
        Assert.Equal((wanted.Width, wanted.Height), (found.Width, found.Height));
        double share = wanted.ShareOfBlocksThatDiffer(found, GreysApart);
        Assert.True(share <= ShareAllowed, FormattableString.Invariant($"{share:P2} of {picture} differ from {approved}; look at both"));
    }
}
