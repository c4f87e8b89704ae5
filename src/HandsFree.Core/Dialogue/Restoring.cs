using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>A round goes on where it was interrupted: the program stopped, the laptop was closed, another aide took over. What was saved
/// is known from the journal alone; what was not confirmed is gone, and identity is asked again.</summary>
internal static class Restoring
{
    /// <summary>A resident's set: as she was left in this session, else as the journal tells.</summary>
    public static ResidentSet SetOf(this Turn turn, Resident resident) =>
        turn.State.Left.GetValueOrDefault(resident.Id) ?? FromJournal(resident, turn.State.Journal);

    /// <summary>The events of the round that was not ended; none where the last one was.</summary>
    public static ImmutableList<JournalEvent> Unfinished(IEnumerable<JournalEvent> journal)
    {
        ImmutableList<JournalEvent> all = [.. journal];
        int begin = all.FindLastIndex(e => e is RoundEnded) + 1;
        begin = all.FindIndex(begin, e => e is RoundStarted);
        return begin < 0 ? [] : all.GetRange(begin, all.Count - begin);
    }

    public static ResidentSet FromJournal(Resident resident, ImmutableList<JournalEvent> journal)
    {
        HashSet<string> gone = [.. journal.OfType<EnteredInError>().Select(e => e.Event)];
        ImmutableList<JournalEvent> round = Unfinished(journal).RemoveAll(e => gone.Contains(e.Id));
        ResidentSet set = round.Aggregate(new ResidentSet(resident), (before, entry) => With(before, entry, round));
        return RecheckChains.Of(journal, resident.Id).Values
            .Where(chain => chain.Waiting is not null || chain.Readings.Any(round.Contains))
            .Aggregate(set, (before, chain) => WithChain(before, chain, journal.OfType<ReportOpened>().Where(r => !gone.Contains(r.Id))));
    }

    private static ResidentSet With(ResidentSet set, JournalEvent entry, ImmutableList<JournalEvent> round) => entry switch
    {
        ReadingRecorded e when e.Resident == set.Resident.Id => Settled(set, e.Confirmed.Reading.Value.Sign) with
        {
            Saved = set.Saved.RemoveAll(s => s.Events[0] == e.Amends)
                .Add(new SavedItem(WithWhatCame(e, round), e.Confirmed.Reading.Value.Sign, e, e.Confirmed.ReadBack.Text, set)),
        },
        NotTakenRecorded { Sign: { } sign } e when e.Resident == set.Resident.Id => set with
        {
            NotTaken = set.NotTaken.SetItem(sign, e.Reason),
            Open = set.Open.Remove(sign),
            CouldNotObtain = e.Reason == Meanings.NotTakenReason.CouldNotObtain
                ? set.CouldNotObtain.SetItem(sign, set.CouldNotObtain.GetValueOrDefault(sign) + 1)
                : set.CouldNotObtain,
            Saved = set.Saved.Add(new SavedItem([e.Id], sign, null, e.ReadBack, set)),
        },
        LeftOpen e when e.Resident == set.Resident.Id => set with { Open = set.Open.Remove(e.Sign).Add(e.Sign) },
        ReportOpened { Sign: { } sign } e when e.Resident == set.Resident.Id => set with
        {
            Reported = set.Reported.SetItem(sign, set.Reported.TryGetValue(sign, out ReportUrgency open) && open > e.Urgency ? open : e.Urgency),
        },
        _ => set,
    };

    private static ResidentSet Settled(ResidentSet set, VitalSign sign) =>
        set with { NotTaken = set.NotTaken.Remove(sign), Open = set.Open.Remove(sign) };

    // What an undo of the reading takes with it.
    private static ImmutableList<string> WithWhatCame(ReadingRecorded reading, ImmutableList<JournalEvent> round) =>
    [
        reading.Id,
        .. round.Where(e => e is RecheckAsked asked && asked.Reading == reading.Id
            || e is ReportOpened { Readings: [.., var last] } && last == reading.Id).Select(e => e.Id),
    ];

    private static ResidentSet WithChain(ResidentSet set, RecheckChain chain, IEnumerable<ReportOpened> reports)
    {
        set = set with
        {
            RechecksAsked = set.RechecksAsked.SetItem(chain.Sign, chain.RechecksAsked),
            Chains = set.Chains.SetItem(chain.Sign, [.. chain.Readings.Select(r => r.Id)]),
        };
        if (chain is not { Waiting: { } asked, Doubted: { } doubted })
        {
            return set;
        }

        ReportUrgency? reported = reports.Where(chain.IsIn).Max(r => (ReportUrgency?)r.Urgency);
        return set with
        {
            Waiting = set.Waiting.Add(new WaitingRecheck(chain.Sign, asked.Instruction, doubted.Decision, asked.DueAt)),
            Reported = reported is { } urgency ? set.Reported.SetItem(chain.Sign, urgency) : set.Reported,
        };
    }
}
