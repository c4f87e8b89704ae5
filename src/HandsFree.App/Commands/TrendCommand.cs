using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Pages;
using HandsFree.App.Unlocking;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree trend": the readings of one resident as a page.</summary>
internal static class TrendCommand
{
    private const int MostDays = 366;

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> id = new("ID") { Description = "The resident's id, as \"residents list\" names it" };
        Option<int> days = new("--days") { Description = $"How far back it goes, 1 to {MostDays}", DefaultValueFactory = _ => 31, HelpName = "N" };
        PageOptions pages = new();
        Command command = new("trend", "A page with every reading of one resident in a month: charts with limits, and a table; needs --page") { id, days };
        pages.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            if (!pages.IsAsked(parsed))
            {
                return host.Refuse("trend writes a page; name the file with --page FILE.html or --page FILE.pdf");
            }

            if (parsed.GetValue(days) is var number && number is < 1 or > MostDays)
            {
                return host.Refuse($"--days is {number}; it can be 1 to {MostDays}");
            }

            (PageTarget? target, string? wrong) = pages.Target(parsed);
            if (target is null)
            {
                return host.Refuse(wrong!);
            }

            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            return opening.TryGet(out Home? home)
                ? TrendPages.Write(host, home, services.GetRequiredService<Unlocker>(), target, parsed.GetValue(id)!, number)
                : host.RefuseHome(opening);
        });
    }
}
