using System.Text;
using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Homes;

namespace HandsFree.App.Composition;

/// <summary>The log of a home: what kind of thing happened, when and how long it took. Never a name, a word or a value, so that the
/// file can be handed to somebody who helps. Best effort: where it can't be written, that is said once and the work goes on.</summary>
internal sealed class ProgramLog(HomeFolder home, Surroundings surroundings)
{
    private const long MostBytes = 1_000_000;
    private readonly Lock writing = new();
    private bool broken;

    /// <summary>The log's file.</summary>
    public string File => home.LogFile;

    /// <summary>Notes something, where the home's folder is there.</summary>
    /// <param name="happened">What kind of thing.</param>
    /// <param name="took">How long it took, or null.</param>
    public void Note(LogKind happened, TimeSpan? took = null)
    {
        if (home.Exists)
        {
            Write(took is { } time ? string.Create(CultureInfo.InvariantCulture, $"{happened} {time.TotalMilliseconds:0} ms") : $"{happened}");
        }
    }

    /// <summary>Notes a bug: the kinds of the exceptions and where they were thrown. Their messages stay out, they may hold values.</summary>
    public void Bug(Exception bug)
    {
        for (Exception? at = bug; at is not null; at = at.InnerException)
        {
            Write($"{LogKind.Bug} {at.GetType().FullName}");
            foreach (StackFrame frame in new StackTrace(at, fNeedFileInfo: true).GetFrames())
            {
                string file = frame.GetFileName() is { } path ? $" {Path.GetFileName(path)}:{frame.GetFileLineNumber()}" : "";
                Write($"  at {frame.GetMethod()?.DeclaringType?.FullName}.{frame.GetMethod()?.Name}{file}");
            }
        }
    }

    private void Write(string line)
    {
        lock (writing)
        {
            try
            {
                HomeFolder.Make(home.Path);
                HomeFolder.Make(Path.GetDirectoryName(File)!);
                if (new FileInfo(File) is { Exists: true, Length: > MostBytes })
                {
                    System.IO.File.Move(File, File + ".1", overwrite: true);
                }

                string when = surroundings.Time.GetUtcNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);
                using FileStream log = new(File, Appending());
                log.Write(Encoding.UTF8.GetBytes($"{when} {line}\n"));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                if (!broken)
                {
                    broken = true;
                    surroundings.Error.WriteLine($"handsfree: the log {File} can't be written ({e.Message.ReplaceLineEndings(" ")}); the work goes on without it");
                }
            }
        }
    }

    private static FileStreamOptions Appending()
    {
        FileStreamOptions options = new() { Mode = FileMode.Append, Access = FileAccess.Write, Share = FileShare.ReadWrite };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }
}
