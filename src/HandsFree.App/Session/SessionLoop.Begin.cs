using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;

namespace HandsFree.App.Session;

/// <content>How a session begins: with a new round, or with one that was cut off.</content>
internal sealed partial class SessionLoop
{
    private void Begin(string aide, string session)
    {
        if (kept.Begin(aide, session) is not { } resumed)
        {
            Carry(parts.Machine.Begin(
                aide, session, parts.Past ?? parts.Journal.ReadFrom(1).Select(e => e.Event), Now, parts.CutIsLost || parts.Cut is not null));
            return;
        }

        state = resumed.State;
        foreach (Effect effect in KeptRound.Effects(resumed, Now))
        {
            Carry(effect);
        }

        foreach (UnansweredBatch batch in resumed.Unanswered.Where(b => b.IsWritten))
        {
            answers.Enqueue(new DialogueEvent.Saved(Now, batch.Record.Batch, parts.Journal.Count));
        }

        AnswerAll();
        Step(new DialogueEvent.Resumed(Now, resumed.Since));
    }
}
