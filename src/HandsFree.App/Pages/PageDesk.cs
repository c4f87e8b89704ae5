using System.Text;
using HandsFree.App.Commands;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.Pages;
using HandsFree.Pages.Handovers;

namespace HandsFree.App.Pages;

/// <summary>What the commands that write a page share.</summary>
/// <param name="host">Says what was done or what is wrong.</param>
/// <param name="home">The home.</param>
/// <param name="target">Where the page goes.</param>
internal sealed class PageDesk(CommandHost host, Home home, PageTarget target)
{
    /// <summary>What is said with every page.</summary>
    public const string Warning =
        "The file holds personal data and is not sealed; on this device only you may read it. It needs no printer: open it, print it from there where there is one, "
        + "then delete it and shred the paper.";

    /// <summary>On what it is printed.</summary>
    public Paper Paper => target.Paper ?? (home.Settings.TemperatureUnit == Core.Quantities.TemperatureUnit.Fahrenheit ? Paper.Letter : Paper.A4);

    /// <summary>The present moment in the home's time zone.</summary>
    public DateTimeOffset Now => home.Settings.Here(host.Surroundings.Time.GetUtcNow());

    /// <summary>What a page says of itself.</summary>
    public SheetFacts Facts(PageRecord record, DateTimeOffset since, string? remark) =>
        new(home.Settings.Name, Now, home.Settings.Here(since), host.Surroundings.DeviceName, record.By, record.Entries, home.Settings.RosterUnits)
        {
            Here = home.Settings.Here,
            Wording = home.Settings.Wording.Of,
            Overdue = home.Settings.Overdue,
            Round = home.Settings.Round,
            WithNames = target.WithNames,
            Remark = remark,
            Anchor = record.Anchor,
        };

    /// <summary>Writes the page.</summary>
    /// <param name="what">What is in it, in words.</param>
    /// <param name="html">Makes it as HTML.</param>
    /// <param name="pdf">Makes it as PDF.</param>
    public int Write(string what, Func<string> html, Func<byte[]> pdf)
    {
        byte[] content = target.IsPdf ? pdf() : Encoding.UTF8.GetBytes(html());
        if (AtomicFile.Write(target.File, content, target.Overwrite) is { } wrong)
        {
            return host.Refuse(wrong);
        }

        host.Surroundings.Out.WriteLine($"{target.File}: {what}, {Paper.Name}");
        host.Surroundings.Out.WriteLine(Warning);
        return ExitCodes.Done;
    }
}
