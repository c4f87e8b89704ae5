namespace HandsFree.Core.Dialogue;

/// <summary>Over: nothing is answered any more, only the journal's answers are taken in.</summary>
internal static class EndedState
{
    public static Page Page() => new Page(StateKind.Ended)
        .WithJournal()
        .Ignore([.. Enum.GetValues<Trigger>().Except([Trigger.Saved, Trigger.SaveFailed, Trigger.Resumed])]);
}
