using HandsFree.App.Journals;
using System.CommandLine;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.ResidentDesk;
using HandsFree.App.Unlocking;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Rosters;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree residents import": the whole roster from a file, or nothing of it.</summary>
internal static class ResidentsImportCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> file = new("FILE")
        {
            Description = $"All residents of the home: a table FILE.csv with the columns {string.Join(", ", RosterColumns.All)} (needed: {string.Join(", ", RosterColumns.Needed)}); or FILE.json, a FHIR R4 bundle of Patients, Encounters and Locations",
        };
        Option<bool> dryRun = new("--dry-run") { Description = "Only says what would change" };
        Option<bool> yes = new("--yes") { Description = "Does not ask before it changes a roster that is there" };
        Command command = new("import", "Reads all residents from a file; shows what changes before it does it, and takes all or nothing") { file, dryRun, yes };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            (ImportedRoster? imported, IReadOnlyList<string> errors) = RosterFile.Read(parsed.GetValue(file)!, home.Settings);
            if (imported is null)
            {
                return host.RefuseAll(errors);
            }

            Roster after = RosterMerge.Of(home.Roster, imported.Residents, home.Settings.Today(host.Surroundings.Time));
            RosterWriter writer = new(home.Settings);
            IReadOnlyList<RosterChange> changes = new RosterChanges(writer).Of(home.Roster, after);
            foreach (string line in imported.Notes.Concat(changes.Select(c => c.Line)).Append(Summary(after, changes)))
            {
                host.Surroundings.Out.WriteLine(line);
            }

            if (Unfinished(home, services.GetRequiredService<Unlocker>(), after) is { } unfinished)
            {
                return host.Refuse(unfinished);
            }

            if (parsed.GetValue(dryRun) || changes.Count == 0)
            {
                return ExitCodes.Done;
            }

            bool agreed = home.Roster.Residents.Count == 0 || parsed.GetValue(yes) || Asked(host);
            return agreed ? Write(host, services.GetRequiredService<Unlocker>(), home, after) : host.Refuse("nothing was imported; look at the changes above and run it again with --yes");
        });
    }

    private static string Summary(Roster after, IReadOnlyList<RosterChange> changes)
    {
        int Count(RosterChangeKind kind) => changes.Count(c => c.Kind == kind);
        int same = after.Residents.Count - Count(RosterChangeKind.New) - Count(RosterChangeKind.Changed);
        return $"{after.Residents.Count} residents: {Count(RosterChangeKind.New)} new, {Count(RosterChangeKind.Changed)} changed, {same} as before; {Count(RosterChangeKind.Gone)} gone";
    }

    /// <summary>A resident with an open report does not leave the roster unseen: the handover would not name her any more.</summary>
    private static string? Unfinished(Home home, Unlocker unlocker, Roster after)
    {
        (IReadOnlyList<JournalEvent>? journal, string? error) = JournalContent.Read(home.Folder, unlocker, "residents import");
        if (journal is null)
        {
            return error;
        }

        string[] open = [.. HandoverView.From(journal, home.Roster, home.Settings.Round).Entries.Where(e => e.Resident.Room > 0 && e.Reports.Count > 0 && after.ById(e.Resident.Id) is null).Select(e => RosterChanges.Who(e.Resident))];
        return open.Length == 0 ? null : $"nothing was imported: {string.Join("; ", open)} would be gone with a report that no nurse has acknowledged; acknowledge it, or keep the line in the file until then";
    }

    private static bool Asked(CommandHost host)
    {
        if (!host.Surroundings.IsInteractive)
        {
            return false;
        }

        host.Surroundings.Out.Write("Import this? yes or no: ");
        return host.Surroundings.In.ReadLine()?.Trim().ToLowerInvariant() is "yes" or "y";
    }

    private static int Write(CommandHost host, Unlocker unlocker, Home home, Roster after)
    {
        if (HomeChange.Roster(home, unlocker, after) is { } unkept)
        {
            return host.Refuse($"nothing was imported: {unkept}");
        }

        host.Surroundings.Out.WriteLine("imported");
        return ExitCodes.Done;
    }
}
