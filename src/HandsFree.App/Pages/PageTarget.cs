using HandsFree.Pages;

namespace HandsFree.App.Pages;

/// <summary>Where a page goes and how.</summary>
/// <param name="File">The file.</param>
/// <param name="IsPdf">PDF; else HTML.</param>
/// <param name="Paper">The paper that was named, or null.</param>
/// <param name="Overwrite">A file that is there may be replaced.</param>
/// <param name="WithNames">The residents' names are on it.</param>
internal sealed record PageTarget(string File, bool IsPdf, Paper? Paper, bool Overwrite, bool WithNames);
