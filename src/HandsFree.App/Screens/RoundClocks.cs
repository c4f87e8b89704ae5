using System.Globalization;
using HandsFree.App.Session;

namespace HandsFree.App.Screens;

/// <summary>The clocks of the dialogue: a count, a rest, a minute of standing. The one that ends first is shown, a count before all.</summary>
internal sealed class RoundClocks
{
    private readonly Dictionary<string, DateTimeOffset> running = [];

    /// <summary>Takes what the session tells of its clocks.</summary>
    public void Take(SessionNote note)
    {
        if (note is SessionNote.Clock { Ends: { } ends } begun)
        {
            running[begun.Name] = ends;
        }
        else if (note is SessionNote.Clock over)
        {
            running.Remove(over.Name);
        }
    }

    /// <summary>"count 0:23", or empty.</summary>
    public string At(DateTimeOffset now)
    {
        var shown = running.Where(c => c.Value > now).OrderBy(c => c.Key != "count").ThenBy(c => c.Value).ToList();
        return shown.Count == 0 ? "" : $"{Words(shown[0].Key)} {Left(shown[0].Value - now)}";
    }

    private static string Words(string name) => name switch
    {
        "count" => "count",
        "rest" => "rest",
        _ when name.StartsWith("standing", StringComparison.Ordinal) => "standing",
        _ => "again in",
    };

    private static string Left(TimeSpan time)
    {
        int seconds = (int)Math.Ceiling(time.TotalSeconds);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }
}
