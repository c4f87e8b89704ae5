using System.CommandLine;
using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal verify": whether every event is there, as it was written.</summary>
internal static class JournalVerifyCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Option<bool> content = new("--content") { Description = "Look into the events too (needs a PIN where people are set up)" };
        Command command = new("verify", "Checks chain, signature and pages of the journal, without a PIN; where it opens without one, the events too") { json, content };
        return host.Runs(command, (parsed, services) =>
        {
            HomeFolder folder = services.GetRequiredService<HomeFolder>();
            if (!JournalFile.IsBegun(folder))
            {
                return host.Refuse(JournalFile.NoneYet(folder));
            }

            (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.JournalFile, folder.States);
            if (verdict is null)
            {
                return host.Refuse(error!.Message);
            }

            foreach (string finding in verdict.Findings)
            {
                host.Refuse($"{folder.JournalFile}: {finding}; keep the file as it is and restore a backup beside it");
            }

            if (verdict.Findings.Count > 0)
            {
                return ExitCodes.CheckFailed;
            }

            bool looksInto = parsed.GetValue(content) || services.GetRequiredService<Unlocker>().IsGiven
                || Journal.OpensWithoutPin(folder.JournalFile);
            return looksInto
                ? JournalFile.Reading(services, host, journal => Report(host, parsed.GetValue(json), folder, verdict, JournalKinds.Of(journal)))
                : Report(host, parsed.GetValue(json), folder, verdict, null);
        });
    }

    private static int Report(CommandHost host, bool asJson, HomeFolder folder, JournalVerdict verdict, IReadOnlyDictionary<string, int>? kinds)
    {
        string signed = verdict.KnownHere ? "signed by this device" : "signed (this device does not know the journal)";
        host.Surroundings.Out.WriteLine(asJson
            ? JsonSerializer.Serialize(new { file = folder.JournalFile, events = verdict.Events, knownHere = verdict.KnownHere, kinds })
            : $"{folder.JournalFile}: {verdict.Events} events, none missing, none changed, the end {signed}; "
                + (kinds is null ? "what is in them was not looked at (--content)"
                    : $"each readable{(kinds.Count > 0 ? $" ({string.Join(", ", kinds.Select(kind => $"{kind.Value} {kind.Key}"))})" : "")}"));
        return ExitCodes.Done;
    }
}
