using System.Collections.Immutable;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>Rechecks that the journal says are not done, whoever asked for them and however long ago. A value that must reach the nurse
/// stands in the journal with its recheck from the moment it is saved; whoever ends a round next opens the report of it, also where the
/// program that saved it was stopped before anybody could.</summary>
internal static class OpenRechecks
{
    private const int Most = 3;

    /// <summary>"Recheck waits: room 12 bed B, pulse."; empty where none must reach a nurse.</summary>
    public static string Named(Turn turn)
    {
        IReadOnlyList<RecheckChain> open = [.. RecheckChains.Waiting(turn.State.Journal).Where(c => c.Urgency is not null)];
        IEnumerable<string> named = open.Take(Most).Select(c => $"{RoundOrderTexts.Place(turn.Parts.Roster, Resident(turn, c))}, {SignNames.Of(c.Sign)}");
        return open.Count == 0 ? ""
            : $"{(open.Count == 1 ? "Recheck waits" : "Rechecks wait")}: {string.Join("; ", named)}." + (open.Count > Most ? $" {open.Count - Most} more." : "");
    }

    /// <summary>Opens the report of every recheck that was not done and has none, and keeps its resident to be named.</summary>
    public static Turn Report(Turn turn) =>
        RecheckChains.Waiting(turn.Known()).Where(c => c is { Doubted: not null, Urgency: not null } && !turn.IsReported(c)).Aggregate(turn, Report);

    /// <summary>All events of the record: those in the journal, and those on their way there.</summary>
    public static IEnumerable<JournalEvent> Known(this Turn turn) => turn.State.Journal
        .Concat(turn.State.Writing.Values.SelectMany(batch => batch)).Concat(turn.State.Unwritten).Concat(turn.ToWrite);

    private static bool IsReported(this Turn turn, RecheckChain chain)
    {
        HashSet<string> gone = [.. turn.Known().OfType<EnteredInError>().Select(e => e.Event)];
        return turn.Known().OfType<ReportOpened>().Any(r => !gone.Contains(r.Id) && chain.IsIn(r));
    }

    private static Turn Report(Turn turn, RecheckChain chain)
    {
        ResidentSet set = turn.SetOf(Resident(turn, chain));
        ReportUrgency urgency = chain.Urgency!.Value;
        Turn written = turn.WriteReport(
            chain.Resident, urgency, chain.Sign, [.. chain.Readings.Select(r => r.Id)], chain.Doubted!.Decision, Reporting.RecheckNotDone);
        set = set with { Reported = set.Reported.SetItem(chain.Sign, urgency) };
        return written with { State = written.State with { Left = written.State.Left.SetItem(chain.Resident, set) } };
    }

    private static Resident Resident(Turn turn, RecheckChain chain) => turn.Parts.Roster.ById(chain.Resident) ?? HandoverView.Gone(chain.Resident);
}
