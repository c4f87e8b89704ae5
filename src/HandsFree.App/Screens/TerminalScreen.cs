using HandsFree.App.Session;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace HandsFree.App.Screens;

/// <summary>The screen of a round in a terminal.</summary>
/// <param name="board">The view model; told before this screen.</param>
/// <param name="time">The clock.</param>
/// <param name="foot">A second key for the microphone, or null.</param>
internal sealed class TerminalScreen(RoundBoard board, TimeProvider time, Key? foot) : IRoundScreen
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(100);

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        // The board has seen it, and the window looks at the board.
    }

    /// <inheritdoc/>
    public void Run(IRoundKeys keys, CancellationToken over)
    {
        using TerminalGuard guard = new();
        using IApplication application = Application.Create();
        application.Init(null);
        using RoundWindow window = new(board, new RoundKeyboard(keys, foot), time);
        application.AddTimeout(Look, () =>
        {
            window.Refresh();
            if (over.IsCancellationRequested)
            {
                application.RequestStop();
            }

            return true;
        });
        application.Run(window);
    }
}
