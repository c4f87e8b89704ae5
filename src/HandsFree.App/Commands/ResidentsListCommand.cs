using HandsFree.App.Unlocking;
using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.ResidentDesk;
using HandsFree.Core.Residents;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree residents list": everybody by room and bed, with what must be known.</summary>
internal static class ResidentsListCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object a line for each resident, as in roster.json" };
        Command command = new("list", "Lists the residents by room and bed, with alerts of same names, absences and moves") { json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            if (JournalContent.Look(home.Folder, services.GetRequiredService<Unlocker>(), "residents list", _ => "", "") is { Error: { } unseen })
            {
                return host.Refuse(unseen);
            }

            DateOnly today = home.Settings.Today(host.Surroundings.Time);
            foreach (Resident resident in home.Roster.Residents.OrderBy(r => r.Room).ThenBy(r => r.Bed, StringComparer.Ordinal))
            {
                host.Surroundings.Out.WriteLine(parsed.GetValue(json) ? new RosterWriter(home.Settings).Resident(resident).ToJsonString() : Line(home.Roster, resident, today));
            }

            return ExitCodes.Done;
        });
    }

    private static string Line(Roster roster, Resident resident, DateOnly today) =>
        string.Join("; ", RosterAlerts.Of(roster, resident, today).Prepend($"{RosterFaults.Place(resident)}: {resident.Id} {resident.Name}"));
}
