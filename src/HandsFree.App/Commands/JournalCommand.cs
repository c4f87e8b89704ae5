using System.CommandLine;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal": what was saved.</summary>
internal static class JournalCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        new("journal", "Shows, checks, copies and amends what was saved")
        {
            JournalListCommand.Make(host),
            JournalVerifyCommand.Make(host),
            JournalBackupCommand.Make(host),
            JournalRestoreCommand.Make(host),
            JournalAcceptCommand.Make(host),
            JournalAuditCommand.Make(host),
            JournalRetireCommand.Make(host),
            JournalAmendCommand.Make(host),
            JournalReplayCommand.Make(host),
            JournalAudioCommand.Make(host),
        };
}
