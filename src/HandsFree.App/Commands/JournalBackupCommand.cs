using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal backup": a sealed copy, made while the journal is in use.</summary>
internal static class JournalBackupCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> file = new("FILE") { Description = "The backup; must not exist" };
        return host.Runs(
            new Command("backup", "Copies the journal, sealed as it is, and verifies the copy; needs no PIN") { file },
            (parsed, services) =>
            {
                HomeFolder folder = services.GetRequiredService<HomeFolder>();
                if (!JournalFile.IsBegun(folder))
                {
                    return host.Refuse(JournalFile.NoneYet(folder));
                }

                string target = parsed.GetValue(file)!;
                (JournalVerdict? verdict, JournalError? error) = JournalBackup.Make(folder.JournalFile, target, folder.States);
                return CopyReport.Write(host, verdict, error, folder.JournalFile, $"{target}: a backup of {verdict?.Events} events, verified");
            });
    }
}
