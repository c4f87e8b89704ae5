using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Language.Grammars;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>What aides say, kept as data: each sentence, typed, has the meaning that is written beside it.</summary>
public sealed class TrialSentenceTests
{
    private static string[] Lines => [.. File.ReadAllLines(Path.Combine(Shared.Repository, "tests", "HandsFree.Scenarios", "Session", "Trial.sentences.txt"))
        .Where(line => line.Length > 0 && line[0] != '#')];

    [Fact]
    public void Every_sentence_means_what_is_expected_of_it()
    {
        Lines.Length.ShouldBeGreaterThan(50);
        List<string> wrong = [];
        foreach (string[] parts in Lines.Select(line => line.Split(" | ")))
        {
            string found = Described(TypedWords.Understand(parts[1], In(parts[0]), DateTimeOffset.UnixEpoch, WeightUnit.Pounds));
            if (found != parts[2])
            {
                wrong.Add($"{parts[1]}: {found}, expected {parts[2]}");
            }
        }

        wrong.ShouldBeEmpty();
    }

    private static Grammar In(string state) => state switch
    {
        "readings" => Load("readings", null),
        "confirmation" => Load("confirmation", "pulse"),
        "identity" => Load("identity", null),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "no such state"),
    };

    private static Grammar Load(string name, string? rule) => Grammar.Load(Path.Combine(Shared.Repository, "grammars", name + ".jsgf"), rule);

    private static string Described(DialogueEvent happened) => happened switch
    {
        DialogueEvent.Utterance said => said.Meaning switch
        {
            Meaning.ReadingSaid r => $"reading {r.Reading.Value.Sign}",
            Meaning.Hedge => "guess",
            Meaning.Command c => $"command {c.Word}",
            Meaning.Place { Bed: { } bed } p => $"place {p.Room} {bed}",
            Meaning.Place p => $"place {p.Room}",
            Meaning.BedAlone b => $"bed {b.Bed}",
            Meaning.NotTaken => "not taken",
            Meaning.Answer { Yes: true } => "yes",
            Meaning.Correction => "correction",
            Meaning.BirthDate => "birthday",
            var other => other.GetType().Name,
        },
        DialogueEvent.NotAReading { Typed: true } => "?",
        _ => happened.GetType().Name,
    };
}
