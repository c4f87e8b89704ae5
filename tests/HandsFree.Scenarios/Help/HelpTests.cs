using System.Text.RegularExpressions;
using HandsFree.App.Help;
using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Help;

public sealed partial class HelpTests
{
    private static readonly GrammarShelf Grammars = new(Path.Combine(Shared.Repository, "grammars"));

    public static TheoryData<string> Topics => [.. HelpTopics.All.Select(t => t.Topic)];

    [Theory]
    [MemberData(nameof(Topics))]
    public void A_topic_is_as_it_was_read_and_approved(string topic)
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "help", topic);

        run.Code.ShouldBe(0);
        if (topic != HelpTopics.Words)
        {
            Golden.Match(run.Out, topic); // that one is made from the grammars, which have tests of their own
        }

        run.Lines.ShouldAllBe(line => line.Length <= 100);
    }

    [Fact]
    public void Without_a_topic_all_are_listed()
    {
        using TemporaryHome home = new();

        string list = CommandRun.Of(home, "help").Out;

        HelpTopics.All.ShouldAllBe(t => list.Contains($"handsfree help {t.Topic}", StringComparison.Ordinal));
        CommandRun.Of(home, "help", "everything").Code.ShouldBe(2);
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_command_that_a_topic_names_is_there_with_its_options(string topic)
    {
        using TemporaryHome home = new();
        foreach (Match named in Command().Matches(HelpTopics.Text(topic, Grammars)))
        {
            string[] words = [.. named.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).TakeWhile(w => !w.StartsWith("--", StringComparison.Ordinal) && w == w.ToLowerInvariant() && !char.IsDigit(w[0]))];
            string help = CommandRun.Of(home, [.. words.Where(w => w is not ("nurse-1" or "aide-7")), "--help"]).Out;
            help.ShouldNotBeEmpty(named.Value);
            foreach (string option in named.Groups[1].Value.Split(' ').Where(w => w.StartsWith("--", StringComparison.Ordinal) && w != "--help"))
            {
                help.ShouldContain(option, Case.Sensitive, named.Value);
            }
        }
    }

    [Fact]
    public void Every_sentence_of_the_card_s_first_page_is_understood()
    {
        Grammar[] all = [.. GrammarShelf.States.Select(state => Grammars.Of(state))];
        foreach (string sentence in AideCard.Content.Front.SelectMany(part => part.Lines).Select(line => line.Say))
        {
            all.ShouldContain(grammar => Matcher.Match(grammar, sentence).Count > 0, sentence);
        }
    }

    [Fact]
    public void The_words_are_sentences_that_are_understood()
    {
        Grammar[] all = [.. GrammarShelf.States.Select(state => Grammars.Of(state))];
        string[] sentences = [.. HelpTopics.Text(HelpTopics.Words, Grammars).Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Select(line => line.Trim())];

        sentences.Length.ShouldBeGreaterThan(30);
        sentences.ShouldAllBe(sentence => all.Any(grammar => Matcher.Match(grammar, sentence).Count > 0));
    }

    [Fact]
    public void The_card_s_tones_are_those_of_the_program()
    {
        Enum.GetValues<Tone>().Length.ShouldBe(5, "a new tone stands on the card");
        Pitch(Tones.Of(Tone.CountBegins)).ShouldBeGreaterThan(Pitch(Tones.Of(Tone.CountEnds)));
        AideCard.Content.Back[0].Lines.Select(l => l.Say).Take(2).ShouldBe(["high tone", "low tone"]);
    }

    [Fact]
    public void The_card_is_a_page_of_two_sheets_for_paper_and_holds_nobody_s_data()
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "help", "card", "--page", home.At("card.html"), "--paper", "A4");

        run.Code.ShouldBe(0, run.Error);
        string page = File.ReadAllText(home.At("card.html"));
        Regex.Count(page, "<section class=\"card\">").ShouldBe(2);
        page.ShouldContain("size: A4");
        page.ShouldNotContain("Personal data");
        CommandRun.Of(home, "help", "card", "--page", home.At("card.html")).Error.ShouldContain("can't be written");
        CommandRun.Of(home, "help", "round", "--page", home.At("round.html")).Error.ShouldContain("only the card is a page");
    }

    // Crossings of zero upwards a sample.
    private static double Pitch(float[] tone) => tone.Zip(tone.Skip(1)).Count(p => p.First < 0 && p.Second >= 0) / (double)tone.Length;

    [GeneratedRegex("handsfree ([a-z]+(?: [^\\n\",.;()]+)?)")]
    private static partial Regex Command();
}
