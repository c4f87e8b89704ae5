using System.CommandLine;
using HandsFree.App.Commands;
using HandsFree.App.ShiftChange;
using HandsFree.Exchange.Tables;

namespace HandsFree.App.Exports;

/// <summary>"handsfree export csv": readings, sets or reports as a table.</summary>
internal static class ExportCsvCommand
{
    private const string Sets = "sets";
    private const string Reports = "reports";

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string> what = new("--what") { Description = "One reading a line; one set (all that was taken together) a line; or one report a line", DefaultValueFactory = _ => "readings" };
        what.AcceptOnlyFromAmong("readings", Sets, Reports);
        Option<string> file = new("--out") { Description = "The file to write, .csv; must not be there yet", HelpName = "FILE", Required = true };
        Option<string?> from = new("--from") { Description = "Only from this time on: 07:30, or 2026-01-31T07:30 (default: the whole record)", HelpName = "TIME" };
        ExportOptions options = new();
        Command command = new("csv", "A table that spreadsheets and other programs open: UTF-8, commas, units in the names of the columns; residents by their ids") { what, file, from };
        return host.Runs(options.AddTo(command), (parsed, services) => ExportDesk.With(services, host, parsed.GetValue(options.Because)!, desk =>
        {
            string? typed = parsed.GetValue(from);
            DateTimeOffset now = desk.Home.Settings.Here(host.Surroundings.Time.GetUtcNow());
            DateTimeOffset? since = typed is null ? null : ShiftBeginning.Typed(typed, desk.Home.Settings, now)?.At;
            return typed is not null && since is null
                ? host.Refuse($"--from is \"{typed}\"; write a time such as 07:30 or 2026-01-31T07:30")
                : desk.Table(parsed.GetValue(what)!, parsed.GetValue(file)!, parsed.GetValue(options.Unit), since, parsed.GetValue(what) switch
                {
                    Sets => SetTable.Write,
                    Reports => ReportTable.Write,
                    _ => ReadingTable.Write,
                });
        }));
    }
}
