using HandsFree.App.Unlocking;
using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.App.ResidentDesk;
using HandsFree.Core.Residents;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree residents show": all that the roster knows of one resident.</summary>
internal static class ResidentsShowCommand
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> id = new("ID") { Description = "The resident's id, as \"residents list\" names it" };
        Option<bool> json = new("--json") { Description = "One JSON object, as in roster.json" };
        Command command = new("show", "Shows all that the roster knows of one resident") { id, json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            if (JournalContent.Look(home.Folder, services.GetRequiredService<Unlocker>(), $"residents show {parsed.GetValue(id)}", _ => "", "") is { Error: { } unseen })
            {
                return host.Refuse(unseen);
            }

            if (home.Roster.ById(parsed.GetValue(id)!) is not { } resident)
            {
                return host.Refuse($"there is no resident with the id \"{parsed.GetValue(id)}\"; handsfree residents list names them all");
            }

            RosterWriter writer = new(home.Settings);
            host.Surroundings.Out.WriteLine(writer.Resident(resident).ToJsonString(parsed.GetValue(json) ? null : Readable));
            foreach (string alert in parsed.GetValue(json) ? [] : RosterAlerts.Of(home.Roster, resident, home.Settings.Today(host.Surroundings.Time)))
            {
                host.Surroundings.Out.WriteLine(alert);
            }

            return ExitCodes.Done;
        });
    }
}
