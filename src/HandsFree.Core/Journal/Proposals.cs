namespace HandsFree.Core.Journal;

/// <summary>The proposed limits of a journal.</summary>
public static class Proposals
{
    /// <summary>Those that no nurse has looked at, oldest first.</summary>
    public static IReadOnlyList<OrderProposed> Open(IEnumerable<JournalEvent> journal)
    {
        List<JournalEvent> all = [.. journal];
        HashSet<string> settled = [.. all.OfType<ProposalSettled>().Select(s => s.Proposal), .. all.OfType<EnteredInError>().Select(e => e.Event)];
        return [.. all.OfType<OrderProposed>().Where(p => !settled.Contains(p.Id))];
    }
}
