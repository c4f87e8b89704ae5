using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using HandsFree.App.Demo;
using HandsFree.App.Demo.Outcome;
using HandsFree.App.Demo.Script;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Demo;

/// <summary>The demo killed in the middle, its announcements kept by another process: this one.</summary>
public sealed partial class KilledDemoTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Nothing_that_was_announced_as_saved_is_missing_after_a_kill_and_nothing_unconfirmed_is_there(int seed)
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        int linesToLive = new Random(seed).Next(5, 45);
        List<string> written = await RunAndKill(home, shift, linesToLive);
        written.Count.ShouldBeGreaterThanOrEqualTo(linesToLive);

        // As the kill left them: the write-ahead log, its index, drafts, whatever was temporary.
        File.Exists(home.At("killed/journal.db-wal")).ShouldBeTrue();
        SealedFiles.HoldNothingOf(DemoManifest.Read(shift.Folder).Manifest!, home.At("killed"), home.States, home.At("temporary"));

        using HomeJournal journal = HomeJournal.Open(
            new HomeFolder(home.At("killed"), home.States), new Unlocker(CommandRun.Quiet, null), DemoPerson.CredentialOf(DemoManifest.Read(shift.Folder).Manifest!.Aide)).Journal!;
        Dictionary<long, JournalEvent> kept = journal.Entries.ToDictionary(e => e.Sequence, HomeJournal.Decoded);
        foreach (Match saved in written.Select(l => SavedLine().Match(l)).Where(m => m.Success))
        {
            long sequence = long.Parse(saved.Groups[1].Value, CultureInfo.InvariantCulture);
            EntryLine.Of(kept[sequence]).ShouldBe(saved.Groups[2].Value);
        }

        string[] expected = [.. DemoManifest.Read(shift.Folder).Manifest!.Expected.Select(EntryLine.Of)];
        kept.Values.Select(EntryLine.Of).OfType<string>().ShouldBeSubsetOf(expected);
    }

    private static async Task<List<string>> RunAndKill(TemporaryHome home, ShortShift shift, int linesToLive)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            ArgumentList = { "exec", BuiltProgram.Path, "demo", "--fast", "--engine", "words", "--home", home.At("killed") },
            RedirectStandardOutput = true,
        };
        start.Environment["HANDSFREE_ROOT"] = shift.Root;
        start.Environment["HANDSFREE_STATE"] = home.States;
        start.Environment["DOTNET_EnableDiagnostics"] = "0"; // no socket of the runtime among the temporary files
        start.Environment["TMPDIR"] = Directory.CreateDirectory(home.At("temporary")).FullName;
        using Process demo = Process.Start(start)!;
        List<string> written = [];
        while (await demo.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            written.Add(line);
            if (written.Count == linesToLive)
            {
                demo.Kill(); // SIGKILL; what it wrote before is still read
            }
        }

        await demo.WaitForExitAsync(TestContext.Current.CancellationToken);
        return written;
    }

    [GeneratedRegex(@"saved #(\d+)\s+(.+)$")]
    private static partial Regex SavedLine();
}
