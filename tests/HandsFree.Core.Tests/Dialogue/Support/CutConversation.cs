using System.Globalization;
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
            // The journal answers by itself, at once; and the cuts come from the test.
            if (happened is not (DialogueEvent.Saved or DialogueEvent.SaveFailed or DialogueEvent.Resumed))
            {
                events.Add(Doubted(chance, happened) with { At = happened.At + jumped });
            }
        });
        machine = new DialogueMachine(rules, roster, any.Parts.Settings);
    }

    /// <summary>How many events there are.</summary>
    public int Length => events.Count;

    /// <summary>Runs it without a cut.</summary>
    public Outcome Run() => new Playing(this).Play([], powerCut: false);

    /// <summary>Runs it, cut off before these events, or (behind the last of them) after what they had written and before its answer.</summary>
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
    /// <param name="IsAnother">It is rightly another from the cut on: a count that was running begins anew, so what is said meanwhile falls elsewhere;
    /// or a batch of the cut's own took along what waited for the journal to work again, and what is decided then knows of it earlier.</param>
    public sealed record Outcome(string Journal, string State, IReadOnlyList<JournalEvent> Events, int Cuts, bool IsAnother);

    private sealed partial class Playing(CutConversation talk)
    {
        private readonly List<JournalEvent> journal = [];
        private readonly List<(int From, byte[] Bytes)> written = [];
        private readonly List<(int From, byte[] Bytes)> waiting = [];
        private readonly Queue<(Effect.Record Record, bool Saved)> unanswered = [];
        private readonly Dictionary<int, int> done = [];
        private readonly HashSet<string> ofCuts = [];
        private DateTimeOffset last = TestHome.Morning;
        private DialogueState state = null!;
        private int flushed;
        private int cuts;
        private bool isAnother;

        public Outcome Play(HashSet<int> cutAt, bool powerCut)
        {
            Carry(talk.machine.Begin("aide-1", talk.session, talk.past, TestHome.Morning), null, -1);
            Answer(-1);
            for (int i = 0; i < talk.events.Count && state.Kind != StateKind.Ended; i++)
            {
                if (cutAt.Remove(i))
                {
                    i = Cut(powerCut);
                }

                if (i < talk.events.Count && state.Kind != StateKind.Ended)
                {
                    done[i] = 0;
                    Tell(talk.events[i], i);
                    i = cutAt.Remove(i + talk.events.Count) ? Cut(powerCut) - 1 : i;
                    Answer(i);
                }
            }

            // What waits for the journal to work again is written with the first batch that it takes, a cut's own too.
            string all = string.Join('\n', journal.Concat(state.Unwritten).Where(e => !ofCuts.Contains(e.Id)).OrderBy(e => Number(e.Id)).Select(e => Dump.Of(e)));
            string rest = Dump.Of(state, "Journal", "Unwritten", "NextNumber", "LastSaid", "Notice", "Screen", "Listening", "Asked", "SamplePhrases");
            string[] both = Named(all + "\u0001" + rest).Split('\u0001');
            return new Outcome(both[0], both[1], journal, cuts, isAnother);
        }

        private void Answer(int from)
        {
            while (unanswered.TryDequeue(out (Effect.Record Record, bool Saved) batch))
            {
                DateTimeOffset at = from < 0 ? last : talk.events[from].At;
                Tell(batch.Saved ? new DialogueEvent.Saved(at, batch.Record.Batch, 1) : new DialogueEvent.SaveFailed(at, batch.Record.Batch, "chance"), from);
            }
        }

        private void Tell(DialogueEvent happened, int from)
        {
            DialogueState before = state;
            DialogueStep step = talk.machine.Step(state, happened);
            Carry(step, ToldEvents.Of(before, happened, step), from);
        }

        // Whether the journal can write the next batch of an event: the same whenever it happens. What a cut itself writes can be written.
        private bool Saves(int from) => from < 0 || new Random(HashCode.Combine(from, done[from]++)).Next(11) > 0;

        private void Carry(DialogueStep step, DialogueEvent? told, int from)
        {
            if (told is not null)
            {
                waiting.Add((from, DialogueEventCodec.Encode(told)));
            }

            HashSet<string> before = state is null ? [] : [.. state.Unwritten.Select(e => e.Id)];
            state = step.State;
            Effect.Record[] records = [.. step.Effects.OfType<Effect.Record>()];
            foreach (Effect.Record record in records)
            {
                bool saved = Saves(from);
                if (saved)
                {
                    Write();
                    flushed = written.Count;
                    journal.AddRange(record.Events);
                    ofCuts.UnionWith(from < 0 ? record.Events.Where(e => e is RoundResumed or ResidentIdentified && !before.Contains(e.Id)).Select(e => e.Id) : []);
                }

                unanswered.Enqueue((record, saved));
            }

            if (records.Length == 0)
            {
                Write();
            }
        }

        private void Write()
        {
            written.AddRange(waiting);
            waiting.Clear();
        }

        // Restored from what is written; goes on before the first event that was lost, which is said again.
        private int Cut(bool powerCut)
        {
            cuts++;
            if (powerCut)
            {
                written.RemoveRange(flushed, written.Count - flushed);
            }

            waiting.Clear();
            unanswered.Clear();
            int next = written.Select(w => w.From).DefaultIfEmpty(-1).Max() + 1;
            CutRound cut = new(journal.OfType<RoundStarted>().Single(), talk.past, journal, [.. written.Select(w => DialogueEventCodec.Decode(w.Bytes))]);
            ResumedRound resumed = talk.machine.Resume(cut).ShouldNotBeNull();
            state = resumed.State;
            isAnother |= !state.Unwritten.IsEmpty;
            last = resumed.Since;
            foreach (UnansweredBatch batch in resumed.Unanswered)
            {
                batch.IsWritten.ShouldBeTrue("told, and not written at once");
                unanswered.Enqueue((batch.Record, true));
            }

            Answer(next - 1);
            if (state.Kind != StateKind.Ended)
            {
                Tell(new DialogueEvent.Resumed(last, last), -1);
                Answer(-1);
                Identify();
            }

            return next;
        }

        private void Identify()
        {
            bool counted = state.Suspended is { Stage: Stage.Counting { Begun: true } };
            isAnother |= counted;
            Resident? who = state.Suspended is null ? null : ((Stage.AwaitingName)state.Stage).Resident;
            for (int i = 0; i < 4 && state.Suspended is not null; i++)
            {
                Meaning said = state.Kind == StateKind.AwaitingName ? new Meaning.Answer(true)
                    : talk.roster.BirthdayTellsApart(who!) ? new Meaning.BirthDate(who!.Born.Month, who.Born.Day, null)
                    : new Meaning.BandNumber(who!.BandNumber!);
                Tell(new DialogueEvent.Utterance(last, said, "again") { Typed = true }, -1);
                Answer(-1);
            }

            state.Suspended.ShouldBeNull();
            if (counted && state.Stage is Stage.Counting { Begun: false })
            {
                Tell(new DialogueEvent.Played(last), -1);
            }
        }

        private static int Number(string id) => int.Parse(id[(id.LastIndexOf('-') + 1)..], CultureInfo.InvariantCulture);

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
