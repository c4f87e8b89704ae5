using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>Runs a dialogue again from what it was told. No effect is carried out; what it wrote must be what is in the journal, byte for
/// byte: else the program, the rules, the residents or the settings are others, and the round can only be restored from what was saved.</summary>
internal static class TellingAgain
{
    /// <summary>The round; null where it is not what the journal has.</summary>
    public static ResumedRound? Run(DialogueMachine machine, CutRound cut)
    {
        Dictionary<string, byte[]> written = cut.Written.ToDictionary(e => e.Id, JournalEventCodec.Encode, StringComparer.Ordinal);
        HashSet<string> made = [];
        Dictionary<string, DateTimeOffset> timers = [];
        List<Effect.Record> unanswered = [];
        RoundStarted started = cut.Started;
        DialogueStep step = machine.Begin(started.Person, CutRound.SessionOf(started.Id), cut.Past, started.At);
        DateTimeOffset at = started.At;
        foreach (DialogueEvent? told in cut.Told.Prepend(null))
        {
            if (told is not null)
            {
                step = machine.Step(step.State, told);
                at = told.At;
                unanswered.RemoveAll(r => told is DialogueEvent.Saved saved && saved.Batch == r.Batch || told is DialogueEvent.SaveFailed failed && failed.Batch == r.Batch);
            }

            Elapse(timers, told);
            foreach (Effect effect in step.Effects)
            {
                Note(timers, effect, at);
            }

            foreach (Effect.Record record in step.Effects.OfType<Effect.Record>())
            {
                if (record.Events.Any(e => written.TryGetValue(e.Id, out byte[]? was) && !was.AsSpan().SequenceEqual(JournalEventCodec.Encode(e))))
                {
                    return null;
                }

                made.UnionWith(record.Events.Select(e => e.Id));
                unanswered.Add(record);
            }
        }

        return written.Keys.All(made.Contains)
            ? new ResumedRound(step.State, at, [.. unanswered.Select(r => new UnansweredBatch(r, r.Events.All(e => written.ContainsKey(e.Id))))], timers)
            : null;
    }

    private static void Elapse(Dictionary<string, DateTimeOffset> timers, DialogueEvent? told)
    {
        if (told is DialogueEvent.TimerElapsed elapsed)
        {
            timers.Remove(elapsed.Name);
        }
    }

    private static void Note(Dictionary<string, DateTimeOffset> timers, Effect effect, DateTimeOffset at)
    {
        switch (effect)
        {
            case Effect.StartTimer started:
                timers[started.Name] = at + started.After;
                break;
            case Effect.StopTimer stopped:
                timers.Remove(stopped.Name);
                break;
            default:
                break;
        }
    }
}
