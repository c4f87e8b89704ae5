using System.CommandLine;
using HandsFree.App.Commands;
using HandsFree.Exchange.Readings;

namespace HandsFree.App.Imports;

/// <summary>"handsfree import": past readings of other systems, and their limits as proposals.</summary>
internal static class ImportCommand
{
    private const int Year = 366;

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) => new("import", "Takes past readings of another system, for what is usual and for the trend; and its limits, which a nurse accepts or refuses one by one")
    {
        Fhir(host),
        Csv(host),
        List(host),
        Accept(host),
        Refuse(host),
    };

    private static Command Fhir(CommandHost host)
    {
        Argument<string> file = new("FILE") { Description = "A bundle of FHIR R4 in JSON: Observations of the vital signs; Goals with a target of such a sign; with the Patients, or with their identifiers" };
        (Option<int> days, Option<bool> dryRun) = Options();
        return host.Runs(
            new Command("fhir", "Reads a bundle of FHIR R4; what is left out is named, and nothing is taken twice") { file, days, dryRun },
            (parsed, services) => ImportDesk.With(services, host, desk => desk.Fhir(parsed.GetValue(file)!, parsed.GetValue(days), parsed.GetValue(dryRun))));
    }

    private static Command Csv(CommandHost host)
    {
        Argument<string> file = new("FILE") { Description = $"A table FILE.csv: one that \"export csv\" wrote (readings or sets), or one by hand with the columns {string.Join(", ", ReadingColumns.ByHand)} (the first two are needed)" };
        (Option<int> days, Option<bool> dryRun) = Options();
        return host.Runs(
            new Command("csv", "Reads a table of past readings, or none of it; nothing is taken twice") { file, days, dryRun },
            (parsed, services) => ImportDesk.With(services, host, desk => desk.Csv(parsed.GetValue(file)!, parsed.GetValue(days), parsed.GetValue(dryRun))));
    }

    private static Command List(CommandHost host) => host.Runs(
        new Command("proposals", "Lists the limits of other systems that no nurse has looked at"), (_, services) => ProposalDesk.With(services, host, desk => desk.List()));

    private static Command Accept(CommandHost host)
    {
        Argument<int> number = Number();
        Option<bool> yes = new("--yes") { Description = "Don't ask; what would be asked is written all the same" };
        return host.Runs(
            new Command("accept", "Takes a proposed limit as an order; a nurse or a supervisor does") { number, yes },
            (parsed, services) => ProposalDesk.With(services, host, desk => desk.Accept(parsed.GetValue(number), parsed.GetValue(yes))));
    }

    private static Command Refuse(CommandHost host)
    {
        Argument<int> number = Number();
        Option<string> because = new("--because") { Description = "Why not; it stands in the journal", HelpName = "TEXT", Required = true };
        return host.Runs(
            new Command("refuse", "Does not take a proposed limit; a nurse or a supervisor does") { number, because },
            (parsed, services) => ProposalDesk.With(services, host, desk => desk.Refuse(parsed.GetValue(number), parsed.GetValue(because)!)));
    }

    private static Argument<int> Number() => new("NUMBER") { Description = "As \"import proposals\" shows it" };

    private static (Option<int> Days, Option<bool> DryRun) Options() => (
        new("--days") { Description = "Older readings are left out", DefaultValueFactory = _ => Year, HelpName = "N" },
        new("--dry-run") { Description = "Only says what would be taken" });
}
