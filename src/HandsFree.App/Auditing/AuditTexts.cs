using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Pages.Audits;

namespace HandsFree.App.Auditing;

/// <summary>An audit in words: the same sections on the terminal and on the page.</summary>
internal static class AuditTexts
{
    /// <summary>The sections, each with its lines; a section with nothing in it says so.</summary>
    public static IReadOnlyList<AuditSection> Sections(IReadOnlyList<AuditLine> lines, HomeSettings settings) =>
    [
        .. Enum.GetValues<AuditGroup>().Select(group => new AuditSection(
            Heading(group), [.. lines.Where(line => line.Group == group).Select(line => $"{When(line.At, settings)}  {line.Text}")])),
    ];

    /// <summary>A moment in the home's time.</summary>
    public static string When(DateTimeOffset at, HomeSettings settings) => settings.Here(at).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Heading(AuditGroup group) => group switch
    {
        AuditGroup.Alarming => "What a supervisor looks into",
        AuditGroup.Failed => "Tries to open that failed",
        AuditGroup.People => "Who may open the record",
        AuditGroup.Home => "Changes of roster, settings and rules",
        AuditGroup.Out => "What was taken out",
        AuditGroup.Looks => "Who looked at what, and whom",
        _ => throw new ArgumentOutOfRangeException(nameof(group), group, "no such group"),
    };
}
