using System.CommandLine;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Journal.Replaying;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal replay": every reading decided again.</summary>
internal static class JournalReplayCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object a line for each reading of which something differs, and one at the end" };
        Command command = new("replay", "Decides every reading again, with the rules and limits of its day and with today's, and says where it differs") { json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            return !opening.TryGet(out Home? home)
                ? host.RefuseHome(opening)
                : JournalFile.Reading(services, host, journal => Run(host, home, journal, parsed.GetValue(json)));
        });
    }

    private static int Run(CommandHost host, Home home, HomeJournal journal, bool asJson)
    {
        journal.Desk.Viewed("journal replay");
        Replay replay = new(home.Rules, home.Roster, kept => RosterContent.Read(kept, home.Settings));
        int readings = 0, same = 0, other = 0, untried = 0, today = 0, rosterless = 0;
        foreach ((long number, JournalEvent happened) in journal.From(1))
        {
            if (replay.Take(number, happened) is not { } replayed)
            {
                continue;
            }

            readings++;
            same += replayed.IsSame == true ? 1 : 0;
            other += replayed.IsSame == false ? 1 : 0;
            untried += replayed.IsSame is null ? 1 : 0;
            today += replayed.IsOtherToday ? 1 : 0;
            rosterless += replayed.RosterKnown ? 0 : 1;
            if (replayed.IsSame == false || replayed.IsOtherToday)
            {
                host.Surroundings.Out.WriteLine(asJson ? Json(replayed) : Text(replayed));
            }
        }

        host.Surroundings.Out.WriteLine(asJson
            ? JsonSerializer.Serialize(new { readings, same, other, untried, rosterless, today })
            : $"{readings} readings: by the rules of their day {same} decided as then, {other} not, {untried} without their rules or their resident; "
                + $"today's rules and limits would decide {today} differently"
                + (rosterless == 0 ? "" : $"; {rosterless} are older than the first roster that was kept, so today's limits were taken"));
        return other == 0 ? ExitCodes.Done : ExitCodes.CheckFailed;
    }

    private static string Text(ReplayedReading replayed) =>
        $"{replayed.Sequence,6} resident {replayed.Recorded.Resident}, {ReadBackTexts.Of(replayed.Recorded.Confirmed.Reading)}: "
        + $"{EnumWords.Of(replayed.Recorded.Decision.Outcome)}"
        + $"{(replayed is { IsSame: false, Again: { } again } ? $"; the rules of its day say {EnumWords.Of(again.Outcome)}" : "")}"
        + $"{(replayed is { IsOtherToday: true, Today: { } now } ? $"; today's say {EnumWords.Of(now.Outcome)}" : "")}";

    private static string Json(ReplayedReading replayed) => JsonSerializer.Serialize(new
    {
        sequence = replayed.Sequence,
        resident = replayed.Recorded.Resident,
        reading = ReadBackTexts.Of(replayed.Recorded.Confirmed.Reading),
        then = EnumWords.Of(replayed.Recorded.Decision.Outcome),
        again = replayed.Again is { } again ? EnumWords.Of(again.Outcome) : null,
        today = replayed.Today is { } now ? EnumWords.Of(now.Outcome) : null,
    });
}
