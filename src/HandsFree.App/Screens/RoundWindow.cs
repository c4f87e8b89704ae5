using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace HandsFree.App.Screens;

/// <summary>Draws the pages and takes the keys; knows nothing else.</summary>
internal sealed class RoundWindow : Runnable
{
    private static readonly TimeSpan ListsStay = TimeSpan.FromSeconds(30);

    private readonly RoundBoard board;
    private readonly RoundKeyboard keyboard;
    private readonly TimeProvider time;
    private IReadOnlyList<string> lines = [];
    private DateTimeOffset pressed;

    /// <summary>A window.</summary>
    /// <param name="board">The view model.</param>
    /// <param name="keyboard">The keys.</param>
    /// <param name="time">The clock.</param>
    public RoundWindow(RoundBoard board, RoundKeyboard keyboard, TimeProvider time)
    {
        (this.board, this.keyboard, this.time) = (board, keyboard, time);
        CanFocus = true;
        Refresh();
    }

    /// <summary>Looks at the view model, and draws anew where something changed.</summary>
    public void Refresh()
    {
        DateTimeOffset now = time.GetLocalNow();
        if (now - pressed > ListsStay)
        {
            keyboard.PutAway();
        }

        RoundView view = board.At(now);
        IReadOnlyList<string> next = view.IsLocked ? RoundPage.Round(view, keyboard.Typed) : Page(view, now);
        if (!next.SequenceEqual(lines))
        {
            lines = next;
            SetNeedsDraw();
        }
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        pressed = time.GetLocalNow();
        bool meant = keyboard.Press(key);
        Refresh();
        return meant || base.OnKeyDown(key);
    }

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        SetAttributeForRole(VisualRole.Normal);
        for (int row = 0; row < Viewport.Height; row++)
        {
            AddStr(0, row, (row < lines.Count ? lines[row] : "").PadRight(Math.Max(0, Viewport.Width)));
        }

        return true;
    }

    private IReadOnlyList<string> Page(RoundView view, DateTimeOffset now) => keyboard.Page switch
    {
        PageKind.Help => RoundPage.Help(view, keyboard.Typed),
        PageKind.Due => RoundPage.List("Due in this round", board.Due(now), "Nothing is due.", view, keyboard.Typed),
        PageKind.Reports => RoundPage.List("Open reports", board.Reports(), "No report is open.", view, keyboard.Typed),
        _ => RoundPage.Round(view, keyboard.Typed),
    };
}
