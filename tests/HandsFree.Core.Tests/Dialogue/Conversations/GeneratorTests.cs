using System.Reflection;
using FsCheck;
using FsCheck.Fluent;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>The generators give everything that they promise, else what is checked with them is checked on less than it says.</summary>
public sealed class GeneratorTests
{
    [Fact]
    public void A_thousand_conversations_are_a_thousand_different_ones_of_all_sizes_of_integer()
    {
        int[] seeds = [.. AnyConversations.Arbitrary().Generator.Sample(1000, 20).Select(c => c.Seed)];

        seeds.Distinct().Count().ShouldBeGreaterThan(990);
        seeds.Count(s => s < 0).ShouldBeInRange(400, 600);
        seeds.Max(s => Math.Abs((long)s)).ShouldBeGreaterThan(int.MaxValue / 2);
    }

    [Fact]
    public void A_conversation_that_fails_is_shortened()
    {
        Conversation shortest = new(7);
        while (AnyConversations.Arbitrary().Shrinker(shortest).FirstOrDefault(c => c.Steps >= 37) is { } shorter)
        {
            shortest = shorter;
        }

        shortest.ShouldBe(new Conversation(7, 37));
    }

    [Fact]
    public void The_same_conversation_runs_in_the_same_way()
    {
        List<DialogueEvent> first = [], second = [];
        AnyConversation.Run(new Conversation(41), new TestRules(), (talk, happened, before, step) => first.Add(happened));
        AnyConversation.Run(new Conversation(41), new TestRules(), (talk, happened, before, step) => second.Add(happened));

        first.Select(e => e.GetType()).ShouldBe(second.Select(e => e.GetType()));
        first.Select(e => e.At).ShouldBe(second.Select(e => e.At));
    }

    [Fact]
    public void Every_meaning_and_every_word_of_it_is_said()
    {
        AnySaying sayings = new(new Random(1));
        Meaning[] said = [.. Enumerable.Range(0, 20_000).Select(_ => sayings.Anything())];

        Kinds<Meaning>().ShouldBeSubsetOf(said.Select(m => m.GetType()));
        Words(said.OfType<Meaning.Command>().Select(c => c.Word));
        Words(said.OfType<Meaning.AboutRound>().Select(c => c.Word));
        Words(said.OfType<Meaning.Counting>().Select(c => c.Word));
        Words(said.OfType<Meaning.NotTaken>().Select(c => c.Reason));
        Words(said.OfType<Meaning.Query>().Select(c => c.Kind));
        Words(said.OfType<Meaning.ReadingSaid>().Select(c => c.Reading.Value.Sign));
        Words(said.OfType<Meaning.Qualifier>().Select(c => c.How.Site).OfType<TemperatureSite>());
        Words(said.OfType<Meaning.Qualifier>().Select(c => c.How.Position).OfType<BodyPosition>());
        Words(said.OfType<Meaning.Qualifier>().Select(c => c.How.Arm).OfType<Arm>());
    }

    [Fact]
    public void Every_whole_number_of_every_sign_is_said()
    {
        AnySaying sayings = new(new Random(1));
        foreach (VitalSign sign in (VitalSign[])[VitalSign.Pulse, VitalSign.Respirations, VitalSign.OxygenSaturation])
        {
            HashSet<decimal> said = [.. Enumerable.Range(0, 20_000).Select(_ => sayings.Number(sign).First)];
            Enumerable.Range(0, 401).Select(n => (decimal)n).ShouldBeSubsetOf(said, sign.ToString());
        }
    }

    [Fact]
    public void Every_kind_of_event_happens_in_every_state()
    {
        HashSet<Type> happened = [];
        HashSet<(StateKind, Trigger)> tried = [];
        int pairs = Enum.GetValues<StateKind>().Length * Enum.GetValues<Trigger>().Length;
        for (int seed = 0; tried.Count < pairs && seed < 2000; seed++)
        {
            AnyConversation.Run(new Conversation(seed), new TestRules(), (talk, one, before, step) =>
            {
                happened.Add(one.GetType());
                if (tried.Count(pair => pair.Item1 == step.State.Kind) < Enum.GetValues<Trigger>().Length)
                {
                    tried.UnionWith(talk.Everything().Select(e => (step.State.Kind, Triggers.Of(e))));
                }
            });
        }

        Kinds<DialogueEvent>().ShouldBeSubsetOf(happened);
        Enum.GetValues<StateKind>().SelectMany(state => Enum.GetValues<Trigger>().Select(trigger => (state, trigger))).ShouldBeSubsetOf(tried);
    }

    [Fact]
    public void The_engine_errs_in_every_way_and_repeats_its_mistakes()
    {
        Random chance = new(1);
        ErringEngine engine = new(chance, new AnySaying(chance));
        Meaning pulse = new Meaning.ReadingSaid(new Reading(HeartRate.FromPerMinute(60), Circumstances.Unsaid));
        DialogueEvent[] heard = [.. Enumerable.Range(0, 2000).Select(i => engine.Hear(TestHome.Morning.AddSeconds(i), pulse))];
        DialogueEvent.Utterance[] understood = [.. heard.OfType<DialogueEvent.Utterance>()];

        heard.ShouldContain(h => h is DialogueEvent.NothingHeard);
        heard.ShouldContain(h => h is DialogueEvent.PartOfAReading);
        heard.ShouldContain(h => h is DialogueEvent.NotAReading);
        understood.ShouldContain(u => u.Doubtful);
        understood.ShouldContain(u => u.RunnerUp != null);
        understood.ShouldContain(u => u.Typed);
        understood.ShouldAllBe(u => u.Alternatives.Sum(p => p.Probability) <= 1 + 1e-9 && u.Alternatives.Select(p => p.Value).Distinct().Count() == u.Alternatives.Count);
        Meaning[] wrong = [.. understood.Where(u => u.Meaning != pulse).Select(u => u.Meaning)];
        wrong.Length.ShouldBeGreaterThan(100);
        wrong.Zip(wrong.Skip(1)).Count(two => two.First == two.Second).ShouldBeGreaterThan(wrong.Length / 4);
    }

    private static IEnumerable<Type> Kinds<T>() => typeof(T).GetNestedTypes(BindingFlags.Public).Where(t => t.IsSubclassOf(typeof(T)));

    private static void Words<T>(IEnumerable<T> said)
        where T : struct, Enum =>
        Enum.GetValues<T>().ShouldBeSubsetOf(said);
}
