namespace HandsFree.App.Session;

/// <summary>Looks on: a screen, a transcript, a test. It is told on the loop's thread, in order, and decides nothing.</summary>
internal interface ISessionWatcher
{
    /// <summary>Something happened.</summary>
    void Saw(SessionNote note);
}
