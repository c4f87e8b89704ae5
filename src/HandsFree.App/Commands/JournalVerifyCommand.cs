using System.Globalization;
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
        Option<string?> printed = new("--printed")
        {
            Description = "Also whether the entry is there that a printed page names at its top: NUMBER:SIGNS, such as 1204:3fa90c51",
            HelpName = "NUMBER:SIGNS",
        };
        Command command = new("verify", "Checks chain, signature and pages of the journal, without a PIN; where it opens without one, the events too") { json, content, printed };
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

            if (parsed.GetValue(printed) is { } page && WhyNotAsPrinted(folder, page) is { } differs)
            {
                host.Refuse(differs);
                return ExitCodes.CheckFailed;
            }

            bool looksInto = parsed.GetValue(content) || services.GetRequiredService<Unlocker>().IsGiven
                || Journal.OpensWithoutPin(folder.JournalFile);
            return looksInto
                ? JournalFile.Reading(services, host, journal => Report(host, parsed.GetValue(json), folder, verdict, JournalKinds.Of(journal)))
                : Report(host, parsed.GetValue(json), folder, verdict, null);
        });
    }

    private static string? WhyNotAsPrinted(HomeFolder folder, string page)
    {
        string[] parts = page.Replace(",", "", StringComparison.Ordinal).Split(':');
        return parts is not [var text, { Length: 8 } signs] || !long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number)
            ? $"--printed is \"{page}\"; write the number of the entry and the 8 signs behind it, such as 1204:3fa90c51"
            : JournalVerification.IsAsPrinted(folder.JournalFile, number, signs) ? null
            : $"{folder.JournalFile}: entry {number} is not the one on the page ({signs}): the journal was put back, or the page is of another journal; keep both and tell the supervisor";
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
