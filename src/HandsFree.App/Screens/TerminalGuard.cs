using System.Text;

namespace HandsFree.App.Screens;

/// <summary>Gives the terminal back where the program ends in a way that the library does not see: an exception on another thread, the
/// end of the process.</summary>
internal sealed class TerminalGuard : IDisposable
{
    // Mouse reports, bracketed paste and keyboard modes off, plain colours, main screen, visible cursor.
    private const string Restore = "\e[?1003l\e[?1015l\e[?1006l\e[?1000l\e[?2004l\e[<u\e[0m\e[?1049l\e[?25h";

    private int done;

    public TerminalGuard()
    {
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit += OnExit;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Interlocked.Exchange(ref done, 1);
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit -= OnExit;
    }

    private void OnUnhandled(object sender, UnhandledExceptionEventArgs e) => GiveBack();

    private void OnExit(object? sender, EventArgs e) => GiveBack();

    private void GiveBack()
    {
        if (Interlocked.Exchange(ref done, 1) == 0)
        {
            using Stream terminal = Console.OpenStandardOutput();
            terminal.Write(Encoding.ASCII.GetBytes(Restore));
        }
    }
}
