using FsCheck.Xunit;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>What holds in every conversation, whatever is said in whatever order.</summary>
public sealed class AnyConversationTests
{
    private static readonly IRulebook Real = Rulebook.Load().Rulebook.ShouldNotBeNull();

    [Property(MaxTest = 150)]
    public void No_value_is_recorded_without_its_read_back_and_an_explicit_confirmation_after_it(int seed) =>
        AnyConversation.Run(seed, new TestRules(), CheckRecorded);

    [Fact]
    public void Conversations_of_chance_get_somewhere()
    {
        var seen = new HashSet<string>();
        for (int seed = 0; seed < 150; seed++)
        {
            AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
                seen.UnionWith(step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).Where(e => e is not RoundStarted).Select(Name)));
        }

        seen.ShouldBe(
            [
                "RoundEnded", "ResidentIdentified", "IdentificationFailed", "NotTakenRecorded", "AttemptDiscarded", "LeftOpen", "RecheckAsked",
                "ReportOpened", "EnteredInError", "Yes", "SaidAgain", "CorrectedThenYes", "SessionLocked", "SessionUnlocked", "UnlockFailed",
            ],
            ignoreOrder: true);
    }

    private static string Name(JournalEvent entry) => entry is ReadingRecorded r ? r.Confirmed.How.ToString() : entry.GetType().Name;

    [Property(MaxTest = 25)]
    public void Nor_under_the_real_rules(int seed) => AnyConversation.Run(seed, Real, CheckRecorded);

    [Property(MaxTest = 50)]
    public void Every_step_ends_in_a_state_that_the_table_names(int seed) =>
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            Trigger trigger = Triggers.Of(Doubt.Weigh(talk.Parts, before, happened).Event);
            // Wherever a step would rest, a count that is held is read back.
            (TransitionTable.Find(before.Kind, trigger).To.Contains(step.State.Kind)
                || (before.Set?.Held.Count > 0 && step.State.Set!.Held.Count < before.Set.Held.Count))
                .ShouldBeTrue($"{before.Kind} on {trigger} goes to {step.State.Kind}");
        });

    [Property(MaxTest = 50)]
    public void The_same_text_is_never_said_twice_running(int seed)
    {
        string last = "";
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            foreach (Effect.Say say in step.Effects.OfType<Effect.Say>())
            {
                say.Text.ShouldNotBe(last);
                last = say.Text;
            }
        });
    }

    [Property(MaxTest = 50)]
    public void Saved_is_said_only_when_the_journal_has_flushed(int seed) =>
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            if (step.Effects.OfType<Effect.Say>().Any(s => s.Text.StartsWith("Saved.", StringComparison.Ordinal)))
            {
                happened.ShouldBeOfType<DialogueEvent.Saved>();
            }
        });

    [Property(MaxTest = 50)]
    public void Yes_is_listened_for_only_where_something_was_read_back_or_asked(int seed) =>
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            bool hearsYes = step.State.Listening.Kind is ListeningKind.YesNo or ListeningKind.NowOrBefore or ListeningKind.Confirmation;
            bool asks = step.State.Kind is StateKind.AwaitingName or StateKind.AwaitingConfirmation or StateKind.AwaitingNotTaken
                or StateKind.AwaitingAnswer or StateKind.AwaitingUndo or StateKind.NotSaved;
            hearsYes.ShouldBe(asks);
        });

    [Property(MaxTest = 50)]
    public void Event_ids_are_never_used_twice(int seed)
    {
        var seen = new Dictionary<string, JournalEvent>();
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            foreach (JournalEvent entry in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events))
            {
                // A batch that failed is written again as it was.
                seen.TryAdd(entry.Id, entry);
                seen[entry.Id].ShouldBe(entry);
            }
        });
    }

    [Property(MaxTest = 50)]
    public void Every_step_listens_last_and_readings_need_two_identifiers(int seed) =>
        AnyConversation.Run(seed, new TestRules(), (talk, happened, before, step) =>
        {
            if (step.Effects.Count > 0)
            {
                step.Effects[^1].ShouldBe(new Effect.Listen(step.State.Listening));
            }

            foreach (ReadingRecorded reading in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).OfType<ReadingRecorded>())
            {
                talk.Identified.ShouldContain(reading.Resident);
            }
        });

    private static void CheckRecorded(AnyConversation talk, DialogueEvent happened, DialogueState before, DialogueStep step)
    {
        foreach (ReadingRecorded reading in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).OfType<ReadingRecorded>())
        {
            ReadBack readBack = reading.Confirmed.ReadBack;
            talk.SaidAt[readBack.At].ShouldContain(readBack.Text, Case.Insensitive);
            DialogueEvent.Utterance confirmation = talk.Heard[reading.Confirmed.Confirmation.At];
            confirmation.At.ShouldBeGreaterThan(readBack.At);
            ReadBack? waited = talk.Met[confirmation.At] switch
            {
                Stage.AwaitingConfirmation s => s.ReadBack,
                Stage.AwaitingSayingAgain s => s.ReadBack,
                _ => null,
            };
            waited.ShouldBe(readBack);
            if (reading.Confirmed.How == ConfirmedHow.SaidAgain)
            {
                (confirmation.Meaning is Meaning.ValueAlone or Meaning.ReadingSaid).ShouldBeTrue();
            }
            else
            {
                confirmation.Meaning.ShouldBe(new Meaning.Answer(true));
            }
        }
    }
}
