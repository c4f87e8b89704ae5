namespace HandsFree.Store.Journaling;

/// <summary>An event was not written. Nothing of it is in the journal; "saved" must not be said, and the message must
/// reach the user.</summary>
public sealed class JournalWriteException : IOException
{
    internal JournalWriteException(JournalError error, Exception cause)
        : base(error.Message, cause) => Problem = error.Problem;

    /// <summary>The kind of trouble.</summary>
    public JournalProblem Problem { get; }
}
