using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>Daylight saving, leap day, a machine in another time zone. Chicago's clocks go from 02:00 to 03:00 on 8 March 2026 and from 02:00
/// back to 01:00 on 1 November 2026 (second Sunday of March, first Sunday of November: Energy Policy Act of 2005, section 110). What the
/// program lists is the home's time, whatever the machine's zone.</summary>
internal static class Calendar
{
    private static readonly (string Utc, string Here)[] Moments =
    [
        ("2026-03-08T07:59:59Z", "2026-03-08 01:59:59"),
        ("2026-03-08T08:00:00Z", "2026-03-08 03:00:00"),
        ("2026-11-01T06:30:00Z", "2026-11-01 01:30:00"),
        ("2026-11-01T07:30:00Z", "2026-11-01 01:30:00"),
        ("2028-02-29T18:00:00Z", "2028-02-29 12:00:00"),
        ("2028-03-01T05:59:59Z", "2028-02-29 23:59:59"),
        ("2028-12-31T23:59:59Z", "2028-12-31 17:59:59"),
    ];

    public static string Try(int _)
    {
        using TrialFolder folder = TrialFolder.New();
        File.WriteAllText(Path.Combine(folder.Path, "home.json"), """{ "timeZone": "America/Chicago" }""");
        using (HomeJournal journal = folder.OpenHome())
        {
            journal.Events.AppendAll(Moments.Select((m, i) => (JournalEvent)new RoundEnded($"c-{i}", "aide", Moment(m.Utc))));
            FaultMissedException.Unless(
                journal.All().Select(e => e.At.ToUniversalTime()).SequenceEqual(Moments.Select(m => Moment(m.Utc).ToUniversalTime())), "a moment did not come back as it was");
        }

        string[] zones = ["UTC", "America/Chicago", "Pacific/Auckland", "Asia/Kathmandu"];
        foreach (string zone in zones)
        {
            string[] lines = Listed(folder, zone);
            FaultMissedException.Unless(
                lines.Length == Moments.Length && lines.Zip(Moments).All(each => each.First.Contains(each.Second.Here, StringComparison.Ordinal)),
                $"on a machine in {zone}: {string.Join(" | ", lines)}");
        }

        return $"held: both changes of daylight saving, a leap day, a year's end, listed in the home's time on machines of {zones.Length} zones";
    }

    private static DateTimeOffset Moment(string utc) => DateTimeOffset.Parse(utc, CultureInfo.InvariantCulture);

    private static string[] Listed(TrialFolder folder, string zone)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            ArgumentList = { "exec", typeof(HomeJournal).Assembly.Location, "journal", "list", "--home", folder.Path },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["TZ"] = zone;
        start.Environment["HANDSFREE_STATE"] = folder.States;
        using Process program = Process.Start(start)!;
        Task<string> errors = program.StandardError.ReadToEndAsync();
        string[] lines = program.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        program.WaitForExit();
        FaultMissedException.Unless(program.ExitCode == 0, errors.GetAwaiter().GetResult());
        return [.. lines.Where(line => line.Contains("round ended", StringComparison.Ordinal))];
    }
}
