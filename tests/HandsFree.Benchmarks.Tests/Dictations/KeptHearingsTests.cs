using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using HandsFree.Speech.Scripted;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>An engine hears the same sound under the same grammar once, also in a later process.</summary>
public sealed class KeptHearingsTests : IDisposable
{
    private static readonly Grammar Colours = Grammar.Parse("#JSGF V1.0;\ngrammar colours;\npublic <colours> = red {1} | green {2};", "colours.jsgf");
    private static readonly Grammar Shades = Grammar.Parse("#JSGF V1.0;\ngrammar shades;\npublic <shades> = red {7} | dark {8};", "shades.jsgf");
    private static readonly float[] Sound = [0.1f, 0.2f];
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-kept-");

    [Fact]
    public void What_was_heard_is_known_to_the_next_process()
    {
        HandsFree.Speech.Hearing heard = In(Colours, "green", "red");
        using (var first = Kept("stamp", heard))
        {
            first.Hear(Sound, Colours).ShouldBe(heard);
        }

        using var second = Kept("stamp");
        HandsFree.Speech.Hearing known = second.Hear(Sound, Colours);
        known.Candidates.ShouldBe(heard.Candidates);
        (known.Outcome, known.Transcript, second.Heard, second.Known).ShouldBe((heard.Outcome, heard.Transcript, 0, 1));
    }

    [Fact]
    public void Another_sound_grammar_or_program_is_heard_anew()
    {
        using (var first = Kept("stamp", In(Colours, "red"), In(Colours, "green"), In(Shades, "dark")))
        {
            first.Hear(Sound, Colours).Best!.Words.ShouldBe("red");
            first.Hear([0.1f, 0.3f], Colours).Best!.Words.ShouldBe("green");
            first.Hear(Sound, Shades).Best!.Words.ShouldBe("dark");
        }

        using var newer = Kept("another stamp", In(Colours, "green"));
        newer.Hear(Sound, Colours).Best!.Words.ShouldBe("green");
    }

    [Fact]
    public void A_line_that_was_cut_is_left_out()
    {
        using (var first = Kept("stamp", In(Colours, "red")))
        {
            first.Hear(Sound, Colours);
        }

        string file = Directory.GetFiles(folder.FullName, "*.jsonl").ShouldHaveSingleItem();
        File.WriteAllText(file, File.ReadAllText(file)[..^5]);
        using var second = Kept("stamp", In(Colours, "green"));
        second.Hear(Sound, Colours).Best!.Words.ShouldBe("green");
    }

    public void Dispose() => folder.Delete(recursive: true);

    private KeptHearings Kept(string stamp, params HandsFree.Speech.Hearing[] answers) =>
        new(new ScriptedRecognizer(answers), stamp, new HearingStore(folder.FullName));

    private static HandsFree.Speech.Hearing In(Grammar grammar, params string[] words) => new(
        HearingOutcome.Heard, [.. words.Select((w, i) => new Candidate(Matcher.Match(grammar, w)[0], w, 0.6 / (i + 1)))], words[0]);
}
