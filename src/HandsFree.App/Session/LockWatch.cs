using HandsFree.Core.Dialogue;
using HandsFree.Store.Keys;

namespace HandsFree.App.Session;

/// <summary>Locks the session after the home's time, and asks who wants to unlock it for PIN or digits (safety 5). Where nobody is set up,
/// nothing is locked.</summary>
internal sealed class LockWatch(SessionParts parts, SessionTimers timers)
{
    /// <summary>The timer's name.</summary>
    public const string Timer = "lock";

    /// <summary>The home's time begins anew, unless the session is locked or over.</summary>
    public void Watch(DialogueState state)
    {
        if (parts.Key is not null && state.Kind is not (StateKind.Locked or StateKind.Ended))
        {
            timers.Start(Timer, parts.Settings.LockAfter);
        }
    }

    /// <summary>What a PIN that was typed leads to.</summary>
    public DialogueEvent Typed(string text, DateTimeOffset at) => Of(parts.Key!.Typed(text), UnlockedBy.Pin, at);

    /// <summary>What digits that were spoken lead to.</summary>
    public DialogueEvent Spoken(string digits, DateTimeOffset at) => Of(parts.Key!.Spoken(digits), UnlockedBy.SpokenDigits, at);

    private static DialogueEvent Of(PersonCheck check, UnlockedBy by, DateTimeOffset at) =>
        check.IsRight ? new DialogueEvent.Unlocked(at, by) : new DialogueEvent.UnlockRefused(at, check.Wait);
}
