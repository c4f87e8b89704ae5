using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>The lock of safety.md 5 and 6: the round is kept, nothing of a resident is shown or said, identity is asked again.</summary>
public sealed class LockTests
{
    [Fact]
    public void A_lock_leaves_the_resident_keeps_what_waited_for_the_audit_and_says_and_shows_nothing_of_her()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(lock)");
        talk.Said.ShouldBe("Locked. Type your PIN.");
        talk.State.Kind.ShouldBe(StateKind.Locked);
        talk.State.Screen.ShouldBe(new ScreenView("", "", "", "locked: type your PIN"));
        talk.LastEffects.OfType<Effect.Silence>().ShouldBeEmpty(); // the last effects are those of the journal's answer
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Why.ShouldBe("locked");
        talk.Journal.OfType<SessionLocked>().ShouldHaveSingleItem().Person.ShouldBe("aide-1");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void While_locked_nothing_is_recorded_answered_or_told_but_that_it_cannot_call()
    {
        Talk talk = Talk.WithMary().Go("(lock)");
        int before = talk.Journal.Count;
        talk.State.Listening.Kind.ShouldBe(ListeningKind.Commands);
        foreach (string line in new[] { "repeat", "goodbye", "stop", "undo", "(nothing)", "(mumble)", "(timer recheck pulse)" })
        {
            talk.Go(line);
            talk.State.Kind.ShouldBe(StateKind.Locked, line);
        }

        talk.Go("nurse needed").Said.ShouldBe("I cannot call. Use the call light.");
        talk.Journal.Count.ShouldBe(before);
        talk.Transcript[talk.Transcript.IndexOf("Locked.", StringComparison.Ordinal)..].ShouldNotContain("Mary");
    }

    [Fact]
    public void After_it_the_round_goes_on_where_it_was_and_identity_is_asked_again()
    {
        Talk talk = Talk.WithMary().Go("pulse seven two", "yes", "(lock)", "(unlocked)");
        talk.Said.ShouldBe("The round goes on. Room and bed?");
        talk.Journal.OfType<SessionUnlocked>().ShouldHaveSingleItem().By.ShouldBe(UnlockedBy.Pin);
        talk.State.Resident.ShouldBeNull();
        talk.Go("pulse seven two").Said.ShouldStartWith("Not understood.");
        talk.Go("continue").Said.ShouldBe("Mary Miller? Look first.");
        talk.Go("yes", "march third").Go("undo").Said.ShouldContain("pulse, seven two"); // what was saved before the lock is still hers
    }

    [Fact]
    public void A_wrong_try_is_an_event_and_says_that_she_must_wait()
    {
        Talk talk = Talk.WithMary().Go("(lock)", "(wrong 0)");
        talk.Said.ShouldBe("That does not unlock.");
        talk.Go("(wrong 30)").Said.ShouldBe("That does not unlock. Wait a minute.");
        talk.Go("(wrong 3600)").Said.ShouldBe("That does not unlock. Wait some minutes, or ask your supervisor.");
        talk.Journal.OfType<UnlockFailed>().Select(e => e.Wait.TotalSeconds).ShouldBe([0, 30, 3600]);
        talk.State.Kind.ShouldBe(StateKind.Locked);
    }

    [Fact]
    public void Only_where_the_home_allows_it_are_spoken_digits_asked_about()
    {
        Talk.WithMary().Go("(lock)", "four seven one one").State.Listening.Kind.ShouldBe(ListeningKind.Commands);
        Talk talk = Talk.WithMary(new DialogueSettings { UnlocksBySpokenDigits = true }).Go("(lock)");
        talk.Said.ShouldBe("Locked. Say your digits, or type your PIN.");
        talk.Go("four seven one one").LastEffects.OfType<Effect.Unlock>().ShouldHaveSingleItem().Digits.ShouldBe("4711");
        talk.State.Kind.ShouldBe(StateKind.Locked);
    }

    [Fact]
    public void What_the_journal_did_not_take_is_not_lost_to_a_lock()
    {
        Talk talk = Talk.WithMary().Go("pulse seven two", "(saving fails)", "yes", "(lock)");
        talk.State.Kind.ShouldBe(StateKind.NotSaved);
        talk.Go("(saving works)", "yes").Said.ShouldBe("Saved.");
        talk.Go("(lock)").State.Kind.ShouldBe(StateKind.Locked);
    }
}
