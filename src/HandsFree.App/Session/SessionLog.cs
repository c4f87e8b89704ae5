using HandsFree.App.Composition;

namespace HandsFree.App.Session;

/// <summary>Notes in the home's log what kind of thing happened in a session; never what was said or saved.</summary>
internal sealed class SessionLog(ProgramLog log) : ISessionWatcher
{
    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        switch (note)
        {
            case SessionNote.Kept:
                log.Note(LogKind.Saved);
                break;
            case SessionNote.NotKept:
                log.Note(LogKind.SaveFailed);
                break;
            case SessionNote.NotRead:
                log.Note(LogKind.NotRead);
                break;
        }
    }
}
