using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Audio.Endpointing;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Playing;
using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Speech;
using HandsFree.TestKit;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>Visits with marked voices, the real session loop and a real journal.</summary>
internal static class MarkedRun
{
    // Ways of saying are costly to find and the same for all.
    private static readonly GrammarShelf Shelf = new(Path.Combine(Shared.Repository, "grammars"));
    private static readonly Sayings Sayings = new(Shelf);

    public static IReadOnlyList<VisitResult> Play(int visits, double missRate, double mistaken, Habits? habits = null, bool confirmed = true)
    {
        var voices = new MarkedVoices();
        using IRecognizer engine = confirmed ? new SoundReader(voices, mistaken) : new NoConfirmation(new SoundReader(voices, mistaken));
        using var detector = new EnergySpeechDetector();
        var played = new Visits
        {
            Grammars = new ListeningGrammars(Shelf),
            Sayings = Sayings,
            Repertoire = new Repertoire(Sayings, 6, 3),
            Voices = voices,
            Acoustics = new Acoustics(voices, null),
            Recognizer = engine,
            Detector = detector,
            Voice = null,
            Habits = habits ?? new Habits(),
            Seed = 5,
        };
        return [.. Enumerable.Range(0, visits).Select(visit => played.Play(visit, missRate))];
    }
}
