using System.CommandLine;
using HandsFree.App.Recordings;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal audio": the recordings that the home keeps, if it does.</summary>
internal static class JournalAudioCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        new("audio", "Recordings of what was saved: kept only where home.json says so (\"keepAudio\": who approved it, when, for how many days)")
        {
            host.Runs(
                new Command("list", "Lists the recordings that are there, and the event that each belongs to"),
                (_, services) => AudioDesk.With(services, host, desk => desk.List())),
            PlayToFile(host),
            Purge(host),
        };

    private static Command PlayToFile(CommandHost host)
    {
        Argument<string> name = new("RECORDING") { Description = "Its name, as the list shows it" };
        Argument<string> target = new("FILE") { Description = "A WAV file that does not exist yet; it is not sealed" };
        return host.Runs(
            new Command("play-to-file", "Writes a recording as a WAV file; that is an event of the journal") { name, target },
            (parsed, services) => AudioDesk.With(services, host, desk => desk.PlayToFile(parsed.GetValue(name)!, parsed.GetValue(target)!)));
    }

    private static Command Purge(CommandHost host)
    {
        Option<bool> all = new("--all") { Description = "Also those whose days are not over" };
        return host.Runs(
            new Command("purge", "Deletes recordings whose days are over; each deletion is an event") { all },
            (parsed, services) => AudioDesk.With(services, host, desk => desk.Purge(parsed.GetValue(all))));
    }
}
