using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>Shows a round and takes the keys. It is told of the session on the session's thread.</summary>
internal interface IRoundScreen : ISessionWatcher
{
    /// <summary>Takes the keys until the session is over.</summary>
    /// <param name="keys">Where they go.</param>
    /// <param name="over">The session is over.</param>
    void Run(IRoundKeys keys, CancellationToken over);
}
