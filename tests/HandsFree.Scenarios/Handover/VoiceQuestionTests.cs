using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.ShiftChange;
using HandsFree.Core.Handover;
using HandsFree.Core.Meanings;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Speech;
using HandsFree.TestKit;
using Microsoft.Extensions.DependencyInjection;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

/// <summary>The recorded questions of the handover, from the recording to the spoken answer, against the record of an invented home. The
/// expected answers stand in voice-questions.tsv: recording, what was asked before it, answer.</summary>
public sealed class VoiceQuestionTests
{
    [Fact]
    public void Recorded_questions_are_all_heard_and_answered_right()
    {
        string folder = Path.GetDirectoryName(Shared.Audio("dialogue-synthetic/transcripts.tsv"))!;
        using TemporaryHome home = InventedHome.AtTheChangeOfShift();
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess() with { Variable = Named(home) }, home.Path);
        services.GetRequiredService<Engines>().Start(EngineNames.Words, "the test", 1).TryGet(out IRecognizer? recognizer).ShouldBeTrue();
        using IRecognizer engine = recognizer!;
        HandoverQuestions questions = new(services.GetRequiredService<GrammarShelf>());
        FileHearer hearer = new(engine, questions.Grammar, services);
        hearer.WhyNot().ShouldBeNull();
        string[][] rows = [.. Rows()];
        rows.Select(r => r[0]).Order(StringComparer.Ordinal).ShouldBe(
            Directory.GetFiles(folder, "v*.wav").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        Home opened = services.GetRequiredService<HomeOpening>().Home!;
        HandoverRecord record = Record(home, opened);

        List<string> wrong = [];
        List<string> notHeard = [];
        foreach (string[] row in rows)
        {
            HandoverDesk desk = new(opened, record);
            if (row[1].Length > 0)
            {
                desk.Answer(row[1], (Meaning.Query)questions.Understand(row[1])!);
            }

            HeardFile heard = hearer.Hear(Path.Combine(folder, row[0])).Heard!;
            if (heard.Understood is not { } understood || MeaningMap.From(understood.Meaning) is not Meaning.Query query)
            {
                notHeard.Add(row[0]);
                continue;
            }

            string answer = desk.Answer(understood.Words, query).Answer;
            if (answer != row[2])
            {
                wrong.Add($"{row[0]} ({understood.Words}): {answer} instead of: {row[2]}");
            }
        }

        wrong.ShouldBeEmpty();
        notHeard.ShouldBeEmpty();
    }

    private static IEnumerable<string[]> Rows() =>
        File.ReadLines(Path.Combine(Shared.Repository, "tests", "HandsFree.Scenarios", "Handover", "voice-questions.tsv"))
            .Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split('\t'));

    private static HandoverRecord Record(TemporaryHome home, Home opened)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new App.Unlocking.Unlocker(CommandRun.Quiet, null)).Journal!;
        HandoverTime time = new(ShiftBeginning.Typed("07:00", opened.Settings, CommandRun.Now)!.At, opened.Settings.Here(CommandRun.Now));
        return new HandoverRecord(journal.Present(), opened.Roster, opened.Settings.Round, opened.Settings.Clock, time);
    }

    private static Func<string, string?> Named(TemporaryHome home) => name => name switch
    {
        "HANDSFREE_HOME" => home.Path,
        "HANDSFREE_STATE" => home.States,
        _ => Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null,
    };
}
