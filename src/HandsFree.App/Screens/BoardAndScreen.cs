using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>A screen with its view model, which is told first.</summary>
internal sealed class BoardAndScreen(RoundBoard board, IRoundScreen screen) : IRoundScreen
{
    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        board.Saw(note);
        screen.Saw(note);
    }

    /// <inheritdoc/>
    public void Run(IRoundKeys keys, CancellationToken over) => screen.Run(keys, over);
}
