namespace HandsFree.App.Session;

/// <summary>Tells that events of other programs can't be read: in the ear once a session, by name on the screen.</summary>
/// <param name="watcher">Is told which.</param>
/// <param name="say">Says it.</param>
internal sealed class UnreadableNotice(ISessionWatcher watcher, Action<string> say)
{
    private bool told;

    /// <summary>These were passed over; nothing happens where there are none.</summary>
    /// <param name="at">Now.</param>
    /// <param name="lines">One for each: which, and why.</param>
    public void Tell(DateTimeOffset at, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        watcher.Saw(new SessionNote.NotRead(at, lines));
        if (!told)
        {
            told = true;
            say("The record has an entry that I cannot read. Tell your supervisor.");
        }
    }
}
