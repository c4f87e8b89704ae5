using System.Globalization;
using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>A line for each change, in any terminal or file. Lines stay, so they hold neither names nor values, unless the texts are
/// asked for or nobody can hear them. A line that is typed means what it means spoken; an empty one is the microphone's key.</summary>
/// <param name="board">The view model; told before this screen.</param>
/// <param name="input">The keys.</param>
/// <param name="output">The lines.</param>
/// <param name="texts">Whether all that is said is shown.</param>
internal sealed class PlainScreen(RoundBoard board, TextReader input, TextWriter output, bool texts) : IRoundScreen
{
    private string last = "";

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        if (note is SessionNote.Said said && (texts || said.WhyUnheard is not null))
        {
            Line(note.At, said.Text);
        }

        if (note is SessionNote.Sounded { Tone: Core.Dialogue.Tone.Saved })
        {
            Line(note.At, "saved");
        }

        RoundView view = board.At(note.At + RoundBoard.Shown);
        string line = string.Join("  ", new[] { $"{view.Mark} {view.Microphone}", view.Place, view.Awaited, view.Warning }.Where(p => p.Length > 0));
        if (line != last && note is not (SessionNote.Said or SessionNote.Sounded or SessionNote.Shown))
        {
            last = line;
            Line(note.At, line);
        }
    }

    /// <inheritdoc/>
    public void Run(IRoundKeys keys, CancellationToken over)
    {
        // A line that is being typed can't be taken back: the thread ends with the program.
        new Thread(() => ReadKeys(keys, over)) { IsBackground = true, Name = "keys" }.Start();
        over.WaitHandle.WaitOne();
    }

    private void ReadKeys(IRoundKeys keys, CancellationToken over)
    {
        while (!over.IsCancellationRequested && input.ReadLine() is { } typed)
        {
            if (typed.Trim().Length == 0)
            {
                keys.Talk();
            }
            else
            {
                keys.Type(typed.Trim());
            }
        }

        if (board.KeysOnly)
        {
            keys.Leave();
        }
    }

    private void Line(DateTimeOffset at, string text) =>
        output.WriteLine($"{at.ToString("HH:mm:ss", CultureInfo.InvariantCulture)}  {text}");
}
