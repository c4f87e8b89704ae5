using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>What a round that was cut off left in the journal.</summary>
/// <param name="Started">How it began.</param>
/// <param name="Past">The journal as it was then.</param>
/// <param name="Written">Its events that are in the journal, without what it was told.</param>
/// <param name="Told">What its dialogue was told, in order.</param>
public sealed record CutRound(RoundStarted Started, IReadOnlyList<JournalEvent> Past, IReadOnlyList<JournalEvent> Written, IReadOnlyList<DialogueEvent> Told)
{
    /// <summary>The session of an event: its id without the number.</summary>
    public static string SessionOf(string id) => id.LastIndexOf('-') is > 0 and var dash ? id[..dash] : "";

    /// <summary>The round of an aide that was begun last and not ended; null where none is.</summary>
    /// <param name="present">The journal, oldest first.</param>
    /// <param name="aide">Whose.</param>
    public static RoundStarted? Find(IEnumerable<JournalEvent> present, string aide)
    {
        RoundStarted? begun = null;
        foreach (JournalEvent happened in present)
        {
            begun = happened switch
            {
                RoundStarted started when started.Person == aide => started,
                RoundEnded ended when begun is not null && SessionOf(ended.Id) == SessionOf(begun.Id) => null,
                _ => begun,
            };
        }

        return begun;
    }
}
