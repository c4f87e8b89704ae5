using System.Globalization;
using HandsFree.App.Session;

namespace HandsFree.Benchmarks.Live;

/// <summary>Looks after each hour of the room's time, and ends the shift. Told on the session's thread.</summary>
/// <param name="begins">The first moment.</param>
/// <param name="length">Of the shift.</param>
/// <param name="write">Takes a line.</param>
internal sealed class HourWatch(DateTimeOffset begins, TimeSpan length, Action<string> write) : ISessionWatcher
{
    private readonly List<long> memory = [];
    private int saved;

    /// <summary>Live managed bytes after each hour.</summary>
    public IReadOnlyList<long> Memory => memory;

    /// <summary>Is called whenever the program has spoken after the length has passed.</summary>
    public Action WhenOver { get; set; } = static () => { };

    /// <inheritdoc/>
    public void Saw(SessionNote note)
    {
        saved += note is SessionNote.Kept kept ? kept.Events.Count : 0;
        TimeSpan passed = note.At - begins;
        while (passed >= TimeSpan.FromHours(memory.Count + 1))
        {
            memory.Add(GC.GetTotalMemory(forceFullCollection: true));
            write(string.Create(
                CultureInfo.InvariantCulture,
                $"after {memory.Count} h: {saved} events, {memory[^1] / 1e6:0.0} MB managed, {Environment.WorkingSet / 1e6:0} MB resident"));
        }

        if (passed >= length && note is SessionNote.Quiet)
        {
            WhenOver();
        }
    }
}
