using HandsFree.App.Journals;
using System.CommandLine;
using System.Text;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.RuleDesk;
using HandsFree.App.Unlocking;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Trials;
using HandsFree.Exchange.Readings;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules trial": what a changed rule file would have done with past readings, before anyone turns it on.</summary>
internal static class RulesTrialCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> past = new("PAST")
        {
            Description = $"Past readings: a table FILE.csv, one line a set, with the columns {string.Join(", ", ReadingColumns.ByHand)} (the first two are needed); or a journal: a home's folder, or the journal.db in it",
        };
        Option<string?> rules = new("--rules") { Description = "The changed rules of the home, to be held against those in force", HelpName = "FILE" };
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Command command = new("trial", "Says how many rechecks and reports for 100 sets the rules would have made of past readings; nothing is kept") { past, rules, json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            (Rulebook? changed, IReadOnlyList<string> errors) = Changed(parsed.GetValue(rules));
            (IReadOnlyList<TrialReading> readings, IReadOnlyList<string> wrong) = Past(parsed.GetValue(past)!, home, services.GetRequiredService<Unlocker>());
            string[] all = [.. errors, .. wrong];
            if (all.Length > 0)
            {
                return host.RefuseAll(all);
            }

            if (readings.Count == 0)
            {
                return host.Refuse($"{parsed.GetValue(past)}: there are no readings; a trial needs some");
            }

            Resident Of(string id) => home.Roster.ById(id) ?? Nobody.Resident;
            TrialTable table = new(RuleTrial.Of(home.Rules, readings, Of), changed is null ? null : RuleTrial.Of(changed, readings, Of));
            foreach (string line in parsed.GetValue(json) ? [table.Json()] : table.Lines())
            {
                host.Surroundings.Out.WriteLine(line);
            }

            return ExitCodes.Done;
        });
    }

    private static (IReadOnlyList<TrialReading> Past, IReadOnlyList<string> Errors) Past(string path, Home home, Unlocker unlocker)
    {
        if (Directory.Exists(path))
        {
            HomeFolder folder = new(path, home.Folder.States);
            return JournalFile.IsBegun(folder) ? TrialPast.OfJournal(folder, unlocker) : ([], [$"{path}: there is no journal in this folder; name a home's folder or a table"]);
        }

        HomeFolder around = new(Path.GetDirectoryName(Path.GetFullPath(path))!, home.Folder.States);
        return Path.GetFullPath(path) == around.JournalFile ? TrialPast.OfJournal(around, unlocker) : TrialPast.OfTable(path, home.Settings);
    }

    private static (Rulebook? Rules, IReadOnlyList<string> Errors) Changed(string? path)
    {
        if (path is null)
        {
            return (null, []);
        }

        (byte[]? content, string? unreadable) = BoundedFile.Read(path);
        if (content is null)
        {
            return (null, [unreadable!]);
        }

        RulebookLoading loading = Rulebook.Load(new RuleFile(path, Encoding.UTF8.GetString(content)));
        return (loading.Rulebook, [.. loading.Errors.Select(e => e.ToString())]);
    }
}
