using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>What holds in every conversation, whatever is said in whatever order.</summary>
public sealed class AnyConversationTests
{
    private static readonly IRulebook Real = Rulebook.Load().Rulebook.ShouldNotBeNull();

    [ForAny(150)]
    public void No_value_is_recorded_without_its_read_back_and_an_explicit_confirmation_after_it(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), CheckRecorded);

    [Fact]
    public void Conversations_of_chance_get_somewhere()
    {
        var seen = new HashSet<string>();
        for (int seed = 0; seed < 120; seed++)
        {
            AnyConversation.Run(new Conversation(seed), new TestRules(), (talk, happened, before, step) =>
                seen.UnionWith(step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).Where(e => e is not RoundStarted).Select(Name)));
        }

        string[] all =
        [
            "RoundEnded", "ResidentIdentified", "IdentificationFailed", "NotTakenRecorded", "AttemptDiscarded", "LeftOpen", "RecheckAsked",
            "ReportOpened", "ReportTold", "EnteredInError", "Yes", "SaidAgain", "CorrectedThenYes", "SessionLocked", "SessionUnlocked", "UnlockFailed",
        ];
        all.ShouldBeSubsetOf(seen);
    }

    private static string Name(JournalEvent entry) => entry is ReadingRecorded r ? r.Confirmed.How.ToString() : entry.GetType().Name;

    [ForAny(25)]
    public void Nor_under_the_real_rules(Conversation any) => AnyConversation.Run(any, Real, CheckRecorded);

    [ForAny(50)]
    public void Every_step_ends_in_a_state_that_the_table_names(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            Trigger trigger = Triggers.Of(Doubt.Weigh(talk.Parts, before, happened).Event);
            // Wherever a step would rest, a count that is held is read back.
            (TransitionTable.Find(before.Kind, trigger).To.Contains(step.State.Kind)
                || (before.Set?.Held.Count > 0 && step.State.Set!.Held.Count < before.Set.Held.Count))
                .ShouldBeTrue($"{before.Kind} on {trigger} goes to {step.State.Kind}");
        });

    [ForAny(50)]
    public void The_same_text_is_never_said_twice_running(Conversation any)
    {
        string last = "";
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            foreach (Effect.Say say in step.Effects.OfType<Effect.Say>())
            {
                say.Text.ShouldNotBe(last);
                last = say.Text;
            }
        });
    }

    [ForAny(50)]
    public void Saved_is_said_only_when_the_journal_has_flushed(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            if (step.Effects.OfType<Effect.Say>().Any(s => s.Text.StartsWith("Saved.", StringComparison.Ordinal)))
            {
                happened.ShouldBeOfType<DialogueEvent.Saved>();
            }
        });

    [ForAny(50)]
    public void Yes_is_listened_for_only_where_something_was_read_back_or_asked(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            bool hearsYes = step.State.Listening.Kind is ListeningKind.YesNo or ListeningKind.NowOrBefore or ListeningKind.Confirmation;
            bool asks = step.State.Kind is StateKind.AwaitingName or StateKind.AwaitingConfirmation or StateKind.AwaitingNotTaken
                or StateKind.AwaitingAnswer or StateKind.AwaitingUndo or StateKind.NotSaved;
            hearsYes.ShouldBe(asks);
        });

    [ForAny(50)]
    public void Event_ids_are_never_used_twice(Conversation any)
    {
        var seen = new Dictionary<string, JournalEvent>();
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            foreach (JournalEvent entry in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events))
            {
                // A batch that failed is written again as it was.
                seen.TryAdd(entry.Id, entry);
                seen[entry.Id].ShouldBe(entry);
            }
        });
    }

    [ForAny(50)]
    public void Every_step_listens_last_and_readings_need_two_identifiers(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
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

    [ForAny(150)]
    public void A_reading_belongs_to_the_resident_who_was_identified_last_before_it_was_said(Conversation any)
    {
        List<(int Number, string Resident)> identified = [];
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            foreach (JournalEvent entry in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events))
            {
                if (entry is ResidentIdentified who && !identified.Contains((talk.Number[who.At], who.Resident)))
                {
                    identified.Add((talk.Number[who.At], who.Resident));
                }
                else if (entry is ReadingRecorded reading)
                {
                    int said = talk.Number[reading.Confirmed.ReadBack.Understood.Heard.At];
                    identified.Last(i => i.Number < said).Resident.ShouldBe(reading.Resident);
                    talk.Met[reading.Confirmed.ReadBack.Understood.Heard.At].Resident.ShouldBe(reading.Resident);
                    talk.Met[reading.Confirmed.Confirmation.At].Resident.ShouldBe(reading.Resident);
                }
            }
        });
    }

    [ForAny(150)]
    public void An_aide_who_answers_each_read_back_rightly_saves_no_value_that_she_did_not_say(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), attentive: true, check: (talk, happened, before, step) =>
        {
            foreach (ReadingRecorded reading in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).OfType<ReadingRecorded>()
                .Where(r => r.Confirmed.Confirmation.At == happened.At))
            {
                reading.Confirmed.Reading.Value.ShouldBe(talk.Wanted);
            }
        });

    [ForAny(30)]
    public void Whatever_happens_in_whatever_state_is_decided(Conversation any) =>
        AnyConversation.Run(any, new TestRules(), (talk, happened, before, step) =>
        {
            if (talk.Count % 10 == 0)
            {
                foreach (DialogueEvent also in talk.Everything())
                {
                    talk.Try(step.State, also).State.ShouldNotBeNull();
                }
            }
        });

    private static void CheckRecorded(AnyConversation talk, DialogueEvent happened, DialogueState before, DialogueStep step)
    {
        foreach (ReadingRecorded reading in step.Effects.OfType<Effect.Record>().SelectMany(r => r.Events).OfType<ReadingRecorded>())
        {
            ReadBack readBack = reading.Confirmed.ReadBack;
            talk.SaidAt[readBack.At].ShouldContain(readBack.Text, Case.Insensitive);
            DialogueEvent.Utterance confirmation = talk.Heard[reading.Confirmed.Confirmation.At];
            talk.Number[confirmation.At].ShouldBeGreaterThan(talk.Number[readBack.At]);
            ReadBack? waited = talk.Met[confirmation.At].Stage switch
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
