namespace HandsFree.Store.Journaling;

/// <summary>The journal could not be read to the end; its message is one line for the user.</summary>
public sealed class JournalReadException : IOException
{
    internal JournalReadException(JournalError error, Exception? cause = null)
        : base(error.Message, cause) => Problem = error.Problem;

    /// <summary>The kind of trouble.</summary>
    public JournalProblem Problem { get; }
}
