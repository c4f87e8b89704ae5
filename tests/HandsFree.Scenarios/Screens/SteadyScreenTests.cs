using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Screens;

/// <summary>A failing screen never ends a round, and every state has words.</summary>
public sealed class SteadyScreenTests
{
    private static readonly SessionNote Note = new SessionNote.Quiet(DateTimeOffset.UnixEpoch);

    [Fact]
    public void Every_kind_of_listening_has_words() =>
        Enum.GetValues<ListeningKind>().ShouldAllBe(kind => kind == ListeningKind.Nothing || AwaitedWords.Of(new Listening(kind, null, true)).Length > 0);

    [Fact]
    public void A_screen_that_fails_on_a_note_gives_way_to_the_plain_one()
    {
        Recorder plain = new();
        List<Exception> told = [];
        SteadyScreen screen = new(new Broken(), () => plain, told.Add);
        screen.Saw(Note);
        screen.Saw(Note);
        told.ShouldHaveSingleItem().Message.ShouldBe("no words for this");
        plain.Notes.ShouldBe(1);
    }

    [Fact]
    public void A_screen_that_fails_while_it_runs_gives_way_and_the_round_goes_on()
    {
        using CancellationTokenSource over = new();
        Recorder plain = new() { OnRun = over.Cancel };
        SteadyScreen screen = new(new Broken(), () => plain, _ => { });
        screen.Run(new NoKeys(), over.Token);
        plain.Runs.ShouldBe(1);
    }

    [Fact]
    public void Where_the_plain_one_fails_too_the_round_goes_on_in_the_ear()
    {
        using CancellationTokenSource over = new();
        List<Exception> told = [];
        SteadyScreen screen = new(new Broken(), () => new Broken(), why =>
        {
            told.Add(why);
            if (told.Count == 2)
            {
                over.Cancel();
            }
        });
        screen.Run(new NoKeys(), over.Token);
        screen.Saw(Note);
        told.Count.ShouldBe(2);
    }

    private sealed class Broken : IRoundScreen
    {
        public void Saw(SessionNote note) => throw new ArgumentException("no words for this");

        public void Run(IRoundKeys keys, CancellationToken over) => throw new ArgumentException("no words for this");
    }

    private sealed class Recorder : IRoundScreen
    {
        public int Notes { get; private set; }

        public int Runs { get; private set; }

        public Action OnRun { get; init; } = () => { };

        public void Saw(SessionNote note) => Notes++;

        public void Run(IRoundKeys keys, CancellationToken over)
        {
            Runs++;
            OnRun();
        }
    }

    private sealed class NoKeys : IRoundKeys
    {
        public void Type(string text)
        {
        }

        public void Talk()
        {
        }

        public void Leave()
        {
        }
    }
}
