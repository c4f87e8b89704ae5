using HandsFree.App.Homes;
using HandsFree.Benchmarks.Live;
using HandsFree.TestKit;
using HandsFree.TestKit.Sound;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Live;

/// <summary>The live proof in its short form: a resident of the demo, spoken into a null sink while "handsfree round" listens to its
/// monitor in a process of its own, with its own voice coming back as loud as it is.</summary>
public sealed class LiveRoundTests
{
    [Fact]
    public void A_microphone_that_is_unplugged_and_a_server_that_ends_are_said_and_the_question_is_asked_again()
    {
        using PulseServer server = PulseServer.StartOrSkip();
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-live-");
        try
        {
            HomeFolder home = new(Path.Combine(folder.FullName, "home"), Path.Combine(folder.FullName, "state"));
            LiveShift.Read(Path.Combine(Shared.Repository, "demo-audio-synthetic"), []).MakeHome(home);
            using RoundProcess round = RoundProcess.Start(server, home.Path, home.States, "words", TimeProvider.System);
            Says(round, "Room and bed?");

            server.Unload(PulseServer.Mouth);
            Says(round, "The microphone is gone. Plug it in again, or use the keys.");
            server.Load(PulseServer.Mouth);
            Says(round, "The microphone is back. Room and bed?");
            server.Kill();
            server.StartAgain();
            Says(round, "The earpiece is back. Room and bed?");
            round.Runs.ShouldBeTrue();
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Says(RoundProcess round, string words) =>
        round.WaitForWords(words, TimeSpan.FromSeconds(40)).ShouldBeTrue($"\"{words}\" was not said: {string.Join('\n', round.Lines)}");

    [Fact]
    public void A_round_that_is_heard_live_leaves_exactly_the_right_journal()
    {
        using PulseServer server = PulseServer.StartOrSkip();
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-live-");
        List<string> lines = [];
        try
        {
            LiveShift shift = LiveShift.Read(Path.Combine(Shared.Repository, "demo-audio-synthetic"), ["106"]);

            LiveShiftResult result = shift.Run(server, "words", folder.FullName, TimeSpan.FromMinutes(4), lines.Add);

            result.Journal.Missing.ShouldBeEmpty(string.Join('\n', lines));
            result.Journal.Unexpected.ShouldBeEmpty(string.Join('\n', lines));
            result.ExitCode.ShouldBe(0, string.Join('\n', lines));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
