namespace HandsFree.App.Pages;

/// <summary>The file of a page.</summary>
internal static class PageFile
{
    /// <summary>What stands in the way, or null; asked before anybody unlocks anything.</summary>
    public static string? WhyNot(PageTarget target)
    {
        string? folder = Path.GetDirectoryName(target.File);
        return true switch
        {
            _ when Directory.Exists(target.File) => $"{target.File} is a folder; name a file in it",
            _ when !Directory.Exists(folder) => $"{target.File}: the folder {folder} is not there; make it, or name another",
            _ when File.Exists(target.File) && !target.Overwrite => $"{target.File} is there already; name another file, or replace it with --overwrite",
            _ => null,
        };
    }
}
