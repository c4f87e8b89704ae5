using System.CommandLine;
using HandsFree.App.Composition;
using HandsFree.App.ShiftChange;
using HandsFree.App.Homes;
using HandsFree.App.Pages;
using HandsFree.App.Unlocking;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree handover": the questions of the change of shift.</summary>
internal static class HandoverCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string[]> ask = new("--ask")
        {
            Description = "A question, such as \"who needs a recheck\"; may be given several times (default: questions are read from the keyboard)",
            HelpName = "TEXT",
        };
        Option<string?> askAudio = new("--ask-audio") { Description = "A spoken question", HelpName = "FILE.wav" };
        Option<bool> json = new("--json") { Description = "One JSON object a line for each question; remarks go to stderr" };
        Option<string?> began = new("--shift-began")
        {
            Description = "From when on the list counts: 07:00, or 2026-01-31T07:00 (default: the present shift; in its first hour the one before)",
            HelpName = "TIME",
        };
        EngineOptions engine = new();
        PageOptions pages = new();
        Option<string?> unit = new("--unit") { Description = "With --page: only this unit (default: all, each on pages of its own)", HelpName = "NAME" };
        Command command = new("handover", "Answers at the change of shift: who matters first, what is open, what was not taken") { ask, askAudio, json, began };
        engine.AddTo(command);
        pages.AddTo(command);
        command.Options.Add(unit);
        return host.Runs(command, (parsed, services) =>
        {
            string[] typed = parsed.GetValue(ask) ?? [];
            if (typed.Length > 0 && parsed.GetValue(askAudio) is not null)
            {
                return host.Refuse("--ask and --ask-audio exclude each other; give one of them");
            }

            bool asks = typed.Length > 0 || parsed.GetValue(askAudio) is not null;
            if (pages.IsAsked(parsed) ? asks : pages.IsHalfAsked(parsed) || parsed.GetValue(unit) is not null)
            {
                return host.Refuse(asks
                    ? "--page writes a page and --ask asks; run the command once for each"
                    : "--paper, --unit, --overwrite and --without-names say something of a page; name its file with --page FILE.html or --page FILE.pdf");
            }

            (PageTarget? target, string? wrong) = pages.IsAsked(parsed) ? pages.Target(parsed) : (null, null);
            if (wrong is not null)
            {
                return host.Refuse(wrong);
            }

            if (!services.GetRequiredService<HomeOpening>().TryGet(out Home? home))
            {
                return host.RefuseHome(services.GetRequiredService<HomeOpening>());
            }

            if (home.Roster.Residents.Count == 0)
            {
                return host.Refuse($"{home.Folder.RosterFile} has no residents; write it, or name another folder with --home");
            }

            if (target is not null)
            {
                return HandoverPages.Write(host, home, services.GetRequiredService<Unlocker>(), target, parsed.GetValue(unit), parsed.GetValue(began));
            }

            (IReadOnlyList<JournalEvent>? journal, string? error) = JournalContent.Read(home.Folder, services.GetRequiredService<Unlocker>(), "handover");
            if (journal is null)
            {
                return host.Refuse(error!);
            }

            DateTimeOffset now = host.Surroundings.Time.GetUtcNow();
            string? typedBeginning = parsed.GetValue(began);
            if (ShiftBeginning.Of(typedBeginning, home.Settings, journal, now) is not { } since)
            {
                return host.Refuse(ShiftBeginning.Wrong(typedBeginning!));
            }

            HandoverConversation conversation = new(
                Desk(home, journal, since, now), new HandoverQuestions(services.GetRequiredService<Hear.GrammarShelf>()), host, parsed.GetValue(json));
            conversation.Remark(since.Remark);
            return parsed.GetValue(askAudio) is { } recording
                ? conversation.AnswerRecording(recording, () => engine.Start(parsed, services), services)
                : typed.Length > 0 ? conversation.AnswerAll(typed) : conversation.AnswerLines();
        });
    }

    private static HandoverDesk Desk(Home home, IReadOnlyList<JournalEvent> journal, ShiftBeginning since, DateTimeOffset now)
    {
        HandoverTime time = new(since.At, home.Settings.Here(now)) { Overdue = home.Settings.Overdue };
        return new(home, new HandoverRecord(journal, home.Roster, home.Settings.Round, home.Settings.Clock, time));
    }
}
