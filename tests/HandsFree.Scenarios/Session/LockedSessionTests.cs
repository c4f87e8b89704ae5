using HandsFree.App.Demo;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Store.Keys;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>The automatic lock, with simulated time, a real journal and a real PIN.</summary>
public sealed class LockedSessionTests
{
    private static readonly Listening Door = new(ListeningKind.Identity);
    private static readonly Listening YesNo = new(ListeningKind.YesNo);
    private static readonly Listening Bed = new(ListeningKind.Readings);
    private static readonly Listening PulseRead = new(ListeningKind.Confirmation, VitalSign.Pulse);

    [Fact] // Source: clinical-rules 8.4, E-13.
    public void Ten_minutes_without_anything_accepted_lock_and_her_PIN_unlocks_to_the_room_and_bed()
    {
        Queue<string> typed = new(["111222", "goodbye", DemoPerson.Passphrase, "goodbye"]);
        using SessionRig rig = new(withPerson: true)
        {
            TypesAt = note => note is SessionNote.Said { Text: "Locked. Type your PIN." or "That does not unlock." or "Again: That does not unlock." or "The round goes on. Room and bed?" } ? typed.Dequeue() : null,
        };
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "yes");
        rig.Run(quietAtTheEnd: TimeSpan.FromSeconds(700)).ShouldBe(SessionEnd.Goodbye);

        rig.Said.ShouldContain("The round goes on. Room and bed?");
        typed.ShouldBeEmpty();
        SessionLocked locked = rig.Events.OfType<SessionLocked>().ShouldHaveSingleItem();
        DateTimeOffset yes = rig.Notes.OfType<SessionNote.Heard>().Last(n => n.Event is DialogueEvent.Utterance { Words: "yes" }).At;
        (locked.At - yes).ShouldBe(TimeSpan.FromMinutes(10), TimeSpan.FromSeconds(1));
        rig.Events.OfType<UnlockFailed>().Count().ShouldBe(2);
        rig.Events.OfType<SessionUnlocked>().ShouldHaveSingleItem().By.ShouldBe(UnlockedBy.Pin);
        rig.Readings.Count.ShouldBe(1); // the round is kept

        // Nothing of the resident, and nothing of what was typed, from the lock to the unlocking.
        int from = rig.Notes.FindIndex(n => n is SessionNote.Shown { Screen.Awaited: "locked: type your PIN" });
        int to = rig.Notes.FindLastIndex(n => n is SessionNote.Said { Text: "The round goes on. Room and bed?" });
        string all = string.Join('\n', rig.Notes.Skip(from).Take(to - from));
        all.ShouldNotContain("Ann");
        all.ShouldNotContain("12");
        all.ShouldNotContain("pulse", Case.Insensitive);
        all.ShouldNotContain(DemoPerson.Passphrase);
    }

    [Fact]
    public void Who_keeps_working_is_not_locked_out_and_speech_that_is_not_understood_keeps_nothing_open()
    {
        using SessionRig rig = new(withPerson: true);
        Identified(rig).Run(quietAtTheEnd: TimeSpan.FromSeconds(250));
        rig.Events.OfType<SessionLocked>().ShouldBeEmpty();
        using SessionRig silent = new(withPerson: true);
        silent.Run(quietAtTheEnd: TimeSpan.FromSeconds(610));
        silent.Events.OfType<SessionLocked>().ShouldHaveSingleItem();
    }

    [Fact]
    public void Where_nobody_is_set_up_nothing_is_locked()
    {
        using SessionRig rig = new();
        rig.Run(quietAtTheEnd: TimeSpan.FromSeconds(700));
        rig.Events.OfType<SessionLocked>().ShouldBeEmpty();
    }

    [Fact]
    public void Her_spoken_digits_unlock_where_the_home_allows_it_and_are_shown_to_nobody()
    {
        using SessionRig rig = new(withPerson: true) { SpokenUnlock = true, Settings = new SessionSettings { LockAfter = TimeSpan.FromSeconds(1) } };
        (string salt, string hash) = SpokenDigits.Kept("4711");
        rig.Held!.Desk.Write((id, at) => new SpokenDigitsSet(id, "aide", at, "aide", salt, hash));
        Listening digits = new(ListeningKind.SecondIdentifier);
        rig.Says(digits, "four seven one two").Says(digits, "four seven one one").Run();

        rig.Events.OfType<UnlockFailed>().ShouldHaveSingleItem();
        rig.Events.OfType<SessionUnlocked>().ShouldHaveSingleItem().By.ShouldBe(UnlockedBy.SpokenDigits);
        string.Join('\n', rig.Notes).ShouldNotContain("seven");
        ISessionKey key = HolderKey.Of(rig.Held)!;
        key.Spoken("4712").IsRight.ShouldBeFalse();
        key.Spoken("4711").IsRight.ShouldBeTrue();
        SpokenDigits.Fault("4711").ShouldBeNull();
        SpokenDigits.Fault("444444").ShouldNotBeNull().ShouldNotContain("444444");
        SpokenDigits.Fault("123").ShouldNotBeNull();
    }

    [Fact]
    public void Wrong_tries_at_a_locked_session_make_wait_longer_and_longer_and_count_with_those_that_open_the_journal()
    {
        using TemporaryHome home = new();
        FakeTimeProvider time = new(CommandRun.Now);
        using HomeJournal journal = DemoPerson.SetUp(home.Folder, "aide", CommandRun.Quiet with { Time = time }).Journal!;
        ISessionKey key = HolderKey.Of(journal)!;

        key.Typed("no PIN").ShouldBe(new PersonCheck(false, TimeSpan.Zero)); // not counted
        key.Typed("111222").ShouldBe(new PersonCheck(false, TimeSpan.Zero));
        key.Typed("111222").ShouldBe(new PersonCheck(false, TimeSpan.Zero));
        key.Typed("111222").ShouldBe(new PersonCheck(false, TimeSpan.FromSeconds(30)));
        key.Typed(DemoPerson.Passphrase).ShouldBe(new PersonCheck(false, TimeSpan.FromSeconds(30))); // even the right one waits
        time.Advance(TimeSpan.FromSeconds(31));
        key.Typed("111222").ShouldBe(new PersonCheck(false, TimeSpan.FromSeconds(60)));
        Store.Journaling.Journal.Open(home.Folder.JournalFile, new Store.Journaling.JournalAccess(home.States, DemoPerson.CredentialOf("aide"), time))
            .Error!.Problem.ShouldBe(Store.Journaling.JournalProblem.LockedOut);
        time.Advance(TimeSpan.FromSeconds(61));
        key.Typed(DemoPerson.Passphrase).ShouldBe(new PersonCheck(true, TimeSpan.Zero));
        key.Typed("111222").ShouldBe(new PersonCheck(false, TimeSpan.Zero)); // the count began anew
    }

    private static SessionRig Identified(SessionRig rig) =>
        rig.Says(Door, "room twelve bed b").Says(YesNo, "yes").Says(new Listening(ListeningKind.SecondIdentifier), "march fourth");
}
