namespace HandsFree.Store.Journaling;

/// <summary>Who opened a journal may open it no more.</summary>
internal sealed class JournalRemovedException(JournalError error) : Exception(error.Message)
{
    public JournalError Error { get; } = error;
}
