namespace HandsFree.App.Session;

/// <summary>Press to talk: whether sound of a moment is meant for the program. Where no key is needed, all of it is. From any thread.</summary>
/// <param name="needed">Whether the key must be pressed first.</param>
internal sealed class TalkSwitch(bool needed)
{
    private readonly Lock gate = new();
    private DateTimeOffset? since;

    /// <summary>Whether the key is needed and the switch is closed.</summary>
    public bool IsClosed
    {
        get
        {
            lock (gate)
            {
                return needed && since is null;
            }
        }
    }

    /// <summary>The key was pressed: open from now on, or closed where it was open.</summary>
    public void Turn(DateTimeOffset at)
    {
        lock (gate)
        {
            since = since is null ? at : null;
        }
    }

    /// <summary>Nothing more is meant for the program.</summary>
    /// <returns>Whether it was open because of the key.</returns>
    public bool Close()
    {
        lock (gate)
        {
            bool was = needed && since is not null;
            since = null;
            return was;
        }
    }

    /// <summary>Whether sound that was captured then is listened to.</summary>
    public bool IsOpen(DateTimeOffset at)
    {
        lock (gate)
        {
            return !needed || at >= since;
        }
    }
}
