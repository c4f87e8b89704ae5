using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.App.Session;

namespace HandsFree.App.Demo;

/// <summary>Several that look on, told in this order.</summary>
internal sealed class Watchers(IReadOnlyList<ISessionWatcher> session, IReadOnlyList<IRoomWatcher> room) : ISessionWatcher, IRoomWatcher
{
    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        foreach (ISessionWatcher each in session)
        {
            each.Saw(note);
        }
    }

    /// <inheritdoc/>
    public void Speaks(DateTimeOffset at, DemoClip clip)
    {
        foreach (IRoomWatcher each in room)
        {
            each.Speaks(at, clip);
        }
    }

    /// <inheritdoc/>
    public void MovesOn(DateTimeOffset at)
    {
        foreach (IRoomWatcher each in room)
        {
            each.MovesOn(at);
        }
    }

    /// <inheritdoc/>
    public void Passed(ReadOnlySpan<float> aide, ReadOnlySpan<float> program)
    {
        foreach (IRoomWatcher each in room)
        {
            each.Passed(aide, program);
        }
    }
}
