using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>A screen that fails does not end the round: it is given up, said so, and plain lines go on. One that fails too is left, and the
/// round goes on in the ear alone.</summary>
/// <param name="first">The screen; its view model too.</param>
/// <param name="plain">Makes what goes on after it.</param>
/// <param name="failed">Is told what failed.</param>
internal sealed class SteadyScreen(IRoundScreen first, Func<IRoundScreen> plain, Action<Exception> failed) : IRoundScreen
{
    private readonly Lock gate = new();
    private IRoundScreen? shown = first;
    private bool given;

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        IRoundScreen? now = shown;
        try
        {
            now?.Saw(note);
        }
#pragma warning disable CA1031 // Whatever broke the screen is told, and the round goes on without it.
        catch (Exception broken)
#pragma warning restore CA1031
        {
            GiveUp(now, broken);
        }
    }

    /// <inheritdoc/>
    public void Run(IRoundKeys keys, CancellationToken over)
    {
        while (shown is { } now && !over.IsCancellationRequested)
        {
            try
            {
                now.Run(keys, over);
                if (ReferenceEquals(now, shown))
                {
                    return;
                }
            }
#pragma warning disable CA1031 // Whatever broke the screen is told, and the round goes on without it.
            catch (Exception broken)
#pragma warning restore CA1031
            {
                GiveUp(now, broken);
            }
        }

        over.WaitHandle.WaitOne();
    }

    private void GiveUp(IRoundScreen? broken, Exception why)
    {
        lock (gate)
        {
            if (!ReferenceEquals(broken, shown))
            {
                return;
            }

            shown = given ? null : plain();
            given = true;
        }

        failed(why);
    }
}
