using System.Text.RegularExpressions;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Hearings;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Dialogue.Conversations;
using Shouldly;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A conversation of chance that can be cut off before any of its events: by a kill, which loses what was not written, or by a power
/// cut, which loses what was not flushed too. It is restored from what is written, identity is asked again, what was lost is said again, and
/// it goes on.</summary>
internal sealed partial class CutConversation
{
    private readonly List<DialogueEvent> events = [];
    private readonly Dictionary<int, List<bool>> saves = [];
    private readonly DialogueMachine machine;
    private readonly Roster roster = TestHome.Roster;
    private readonly IReadOnlyList<JournalEvent> past;
    private readonly string session;

    /// <summary>A conversation.</summary>
    /// <param name="seed">Of chance.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="session">Its session.</param>
    /// <param name="past">What the journal held when it began.</param>
    public CutConversation(int seed, IRulebook rules, string session = "s1", IReadOnlyList<JournalEvent>? past = null)
    {
        (this.session, this.past) = (session, past ?? []);
        Random chance = new(seed);
        TimeSpan jumped = TimeSpan.Zero;
        AnyConversation any = AnyConversation.Run(new Conversation(seed), rules, (_, happened, _, _) =>
        {
            // Clocks that are set, and laptops that sleep.
            jumped += chance.Next(40) == 0 ? TimeSpan.FromMinutes(chance.Next(-90, 200)) : TimeSpan.Zero;
            events.Add(Doubted(chance, happened) with { At = happened.At + jumped });
        });
        machine = new DialogueMachine(rules, roster, any.Parts.Settings);
    }

    /// <summary>How many events there are.</summary>
    public int Length => events.Count;

    /// <summary>Runs it without a cut.</summary>
    public Outcome Run() => new Playing(this).Play([], powerCut: false);

    /// <summary>Runs it, cut off before these events where that can be.</summary>
    public Outcome Run(IEnumerable<int> cuts, bool powerCut) => new Playing(this).Play([.. cuts], powerCut);

    // Now and then what the engine hears is doubtful, with what else it may have been.
    private static DialogueEvent Doubted(Random chance, DialogueEvent happened)
    {
        if (happened is not DialogueEvent.Utterance { Typed: false } said || chance.Next(4) > 0)
        {
            return happened;
        }

        Meaning other = chance.Next(3) switch
        {
            0 => new Meaning.Answer(false),
            1 => new Meaning.ValueAlone(new SpokenNumber(44)),
            _ => said.RunnerUp ?? new Meaning.Command(CommandWord.Goodbye),
        };
        double probability = 0.4 + (chance.NextDouble() * 0.5);
        return said with
        {
            Probability = probability,
            Doubtful = probability < 0.75,
            Unfound = 0.01,
            Margin = Math.Log(probability / (0.95 - probability)),
            Alternatives = said.Meaning == other ? [new(other, probability)] : [new(said.Meaning, probability), new(other, 0.95 - probability)],
        };
    }

    /// <summary>What came of it.</summary>
    /// <param name="Journal">What is in the journal, ids in their order, without what a cut alone writes.</param>
    /// <param name="State">The state, likewise.</param>
    /// <param name="Events">The journal's events as they are.</param>
    /// <param name="Cuts">How often it was cut off.</param>
    public sealed record Outcome(string Journal, string State, IReadOnlyList<JournalEvent> Events, int Cuts);

    private sealed partial class Playing(CutConversation talk)
    {
        private readonly List<JournalEvent> journal = [];
        private readonly List<(int From, byte[] Bytes)> written = [];
        private readonly List<(int From, byte[] Bytes)> waiting = [];
        private readonly Queue<Effect.Record> unanswered = [];
        private readonly HashSet<string> ofCuts = [];
        private DialogueState state = null!;
        private int flushed;
        private int cuts;

        public Outcome Play(HashSet<int> cutAt, bool powerCut)
        {
            DialogueStep begun = talk.machine.Begin("aide-1", talk.session, talk.past, TestHome.Morning);
            Carry(begun, null, -1, () => true);
            for (int i = 0; i < talk.events.Count && state.Kind != StateKind.Ended; i++)
            {
                if (cutAt.Remove(i) && CanBeCut(i))
                {
                    i = Cut(i, powerCut);
                }

                Take(i);
            }

            string all = string.Join('\n', journal.Where(e => !ofCuts.Contains(e.Id)).Select(e => Dump.Of(e)));
            string rest = Dump.Of(state, "Journal", "NextNumber", "LastSaid", "Screen", "Listening", "Asked", "SamplePhrases");
            string[] both = Named(all + "\u0001" + rest).Split('\u0001');
            return new Outcome(both[0], both[1], journal, cuts);
        }

        private void Take(int i)
        {
            DialogueEvent happened = talk.events[i];
            if (happened is DialogueEvent.Saved or DialogueEvent.SaveFailed)
            {
                if (unanswered.TryDequeue(out Effect.Record? record))
                {
                    bool saved = journal.Contains(record.Events[0]);
                    Tell(saved ? new DialogueEvent.Saved(happened.At, record.Batch, 1) : new DialogueEvent.SaveFailed(happened.At, record.Batch, "chance"), i);
                }

                return;
            }

            Tell(happened, i);
        }

        private void Tell(DialogueEvent happened, int from)
        {
            DialogueState before = state;
            DialogueStep step = talk.machine.Step(state, happened);
            Carry(step, ToldEvents.Of(before, happened, step), from, from < 0 ? () => true : Saves(from));
        }

        // Whether the journal can write the next batch of an event: the same whenever it happens.
        private Func<bool> Saves(int from)
        {
            int next = 0;
            return () =>
            {
                List<bool> all = talk.saves.TryGetValue(from, out List<bool>? known) ? known : talk.saves[from] = [];
                if (next == all.Count)
                {
                    all.Add(((from * 7919) + next) % 11 != 3);
                }

                return all[next++];
            };
        }

        private void Carry(DialogueStep step, DialogueEvent? told, int from, Func<bool> saves)
        {
            if (told is not null)
            {
                waiting.Add((from, DialogueEventCodec.Encode(told)));
            }

            state = step.State;
            bool ofCut = from < 0 && cuts > 0;
            Effect.Record[] records = [.. step.Effects.OfType<Effect.Record>()];
            foreach (Effect.Record record in records)
            {
                if (saves())
                {
                    Write();
                    flushed = written.Count;
                    journal.AddRange(record.Events);
                    ofCuts.UnionWith(ofCut ? record.Events.Where(e => e is RoundResumed or ResidentIdentified).Select(e => e.Id) : []);
                }

                unanswered.Enqueue(record);
            }

            if (records.Length == 0)
            {
                Write();
            }

            if (ofCut)
            {
                while (unanswered.TryDequeue(out Effect.Record? record))
                {
                    Tell(new DialogueEvent.Saved(AtOf(from), record.Batch, 1), -1);
                }
            }
        }

        private DateTimeOffset last = TestHome.Morning;

        private DateTimeOffset AtOf(int from) => from < 0 ? last : talk.events[from].At;

        private void Write()
        {
            written.AddRange(waiting);
            waiting.Clear();
        }

        // In the program the journal's answers come at once: before them nothing else happens.
        private bool CanBeCut(int i) =>
            unanswered.Count <= talk.events.Skip(i).TakeWhile(e => e is DialogueEvent.Saved or DialogueEvent.SaveFailed).Count();

        // Goes on before the first event that was lost.
        private int Cut(int i, bool powerCut)
        {
            cuts++;
            if (powerCut)
            {
                written.RemoveRange(flushed, written.Count - flushed);
            }

            waiting.Clear();
            unanswered.Clear();
            int next = written.Count == 0 ? 0 : written.Max(w => w.From) + 1;
            RoundStarted started = journal.OfType<RoundStarted>().Single();
            CutRound cut = new(started, talk.past, journal, [.. written.Select(w => DialogueEventCodec.Decode(w.Bytes))]);
            ResumedRound resumed = talk.machine.Resume(cut).ShouldNotBeNull();
            state = resumed.State;
            last = resumed.Since;
            int answered = 0;
            foreach (UnansweredBatch batch in resumed.Unanswered)
            {
                batch.IsWritten.ShouldBeTrue("told and not written at once");
                Tell(new DialogueEvent.Saved(last, batch.Record.Batch, 1), -1);
                answered++;
            }

            while (answered > 0 && next < talk.events.Count && talk.events[next] is DialogueEvent.Saved or DialogueEvent.SaveFailed)
            {
                (answered, next) = (answered - 1, next + 1);
            }

            if (state.Kind == StateKind.Ended)
            {
                return talk.events.Count;
            }

            Tell(new DialogueEvent.Resumed(last, last), -1);
            Identify();
            return Math.Min(next, talk.events.Count - 1);
        }

        private void Identify()
        {
            bool counted = state.Suspended is { Stage: Stage.Counting { Begun: true } };
            Resident? who = state.Suspended is null ? null : ((Stage.AwaitingName)state.Stage).Resident;
            for (int i = 0; i < 4 && state.Suspended is not null; i++)
            {
                Meaning said = state.Kind == StateKind.AwaitingName ? new Meaning.Answer(true)
                    : talk.roster.BirthdayTellsApart(who!) ? new Meaning.BirthDate(who!.Born.Month, who.Born.Day, null)
                    : new Meaning.BandNumber(who!.BandNumber!);
                Tell(new DialogueEvent.Utterance(last, said, "again") { Typed = true }, -1);
            }

            state.Suspended.ShouldBeNull();
            if (counted && state.Stage is Stage.Counting { Begun: false })
            {
                Tell(new DialogueEvent.Played(last), -1);
            }
        }

        // Ids by the order in which they come: a cut adds events of its own, and so moves the numbers.
        private static string Named(string text)
        {
            Dictionary<string, int> order = [];
            return Ids().Replace(text, m =>
            {
                order.TryAdd(m.Value, order.Count + 1);
                return $"id {order[m.Value]}";
            });
        }

        [GeneratedRegex(@"\bs\d(-batch)?-\d+\b")]
        private static partial Regex Ids();
    }
}
