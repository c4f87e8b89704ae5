using Terminal.Gui.Input;

namespace HandsFree.App.Screens;

/// <summary>What the keys do: letters make a line, Enter says it, some keys are words of their own.</summary>
/// <param name="keys">Where the words go.</param>
/// <param name="foot">A second key for the microphone, or null.</param>
internal sealed class RoundKeyboard(IRoundKeys keys, Key? foot)
{
    private const int MostLetters = 60;

    /// <summary>The line that is being typed.</summary>
    public string Typed { get; private set; } = "";

    /// <summary>The page that is to be seen.</summary>
    public PageKind Page { get; private set; } = PageKind.Round;

    /// <summary>Nobody pressed a key for a while: the list is put away.</summary>
    public void PutAway() => Page = PageKind.Round;

    /// <summary>A key was pressed.</summary>
    /// <returns>Whether it means something.</returns>
    public bool Press(Key key) => Function(key) || Letter(key);

    private bool Function(Key key)
    {
        if (foot is not null && key == foot)
        {
            keys.Talk();
        }
        else if (key == Key.F1 || key == Key.F2 || key == Key.F3 || key == Key.F4)
        {
            Page = key == Key.F1 ? PageKind.Help : key == Key.F2 ? PageKind.Due : key == Key.F3 ? PageKind.Reports : PageKind.Round;
        }
        else if (key == Key.F5)
        {
            keys.Type("repeat");
        }
        else if (key == Key.Esc)
        {
            Typed = "";
            keys.Type("stop");
        }
        else if (key == Key.Q.WithCtrl || key == Key.C.WithCtrl)
        {
            keys.Leave();
        }
        else
        {
            return false;
        }

        return true;
    }

    private bool Letter(Key key)
    {
        if (key == Key.Enter)
        {
            Say();
        }
        else if (key == Key.Backspace)
        {
            Typed = Typed.Length > 0 ? Typed[..^1] : "";
        }
        else if (key == Key.Space && Typed.Length == 0)
        {
            keys.Talk();
        }
        else if (!key.IsCtrl && !key.IsAlt && key.AsRune.Value is >= ' ' and < 127 and var letter)
        {
            Typed += Typed.Length < MostLetters ? (char)letter : "";
        }
        else
        {
            return false;
        }

        return true;
    }

    // An empty line says nothing: a yes must be meant.
    private void Say()
    {
        string line = Typed.Trim();
        Typed = "";
        if (line.Length > 0)
        {
            Page = PageKind.Round;
            keys.Type(line.ToLowerInvariant());
        }
    }
}
