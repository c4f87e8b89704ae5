using System.Diagnostics.CodeAnalysis;

namespace HandsFree.Store.Journaling;

/// <summary>The outcome of opening a journal: the journal, or what is wrong.</summary>
public sealed class JournalOpening
{
    internal JournalOpening(Journal journal) => Journal = journal;

    internal JournalOpening(JournalError error) => Error = error;

    /// <summary>The open journal; null where opening failed.</summary>
    public Journal? Journal { get; }

    /// <summary>What is wrong; null where the journal is open.</summary>
    public JournalError? Error { get; }

    /// <summary>True with the journal, false with what is wrong.</summary>
    public bool TryGet([NotNullWhen(true)] out Journal? journal, [NotNullWhen(false)] out JournalError? error)
    {
        journal = Journal;
        error = Error;
        return journal is not null;
    }
}
