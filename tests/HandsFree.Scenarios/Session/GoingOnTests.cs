using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>A round that was ended without a goodbye is gone on with: identity first, then the question that stood. Source: safety.md 6.</summary>
public sealed class GoingOnTests
{
    [Fact]
    public void The_question_that_stood_is_asked_again_after_the_identity_and_the_answer_saves()
    {
        using SessionRig rig = new() { Remembers = true };
        rig.Types("room 12 bed b", "yes", "march fourth", "pulse 72").Run();
        rig.Said.Last().ShouldBe("Pulse, seven two.");
        rig.Readings.ShouldBeEmpty();
        int before = rig.Said.Count();

        rig.Types("yes", "march fourth", "yes").Run();

        rig.Said.Skip(before).ShouldBe(["The round goes on. Ann Example? Look first.", "Day and month of birth?", "Ready. Pulse, seven two.", "Saved."]);
        rig.Readings.ShouldHaveSingleItem().Id.ShouldStartWith("s1-");
        rig.Events.OfType<RoundStarted>().ShouldHaveSingleItem();
        rig.Events.OfType<RoundResumed>().ShouldHaveSingleItem();
        rig.Events.Select(e => e.Id).ShouldBeUnique();
    }

    [Fact]
    public void Refused_for_everything_is_not_asked_for_again()
    {
        using SessionRig rig = new() { Remembers = true };
        rig.Types("room 12 bed b", "yes", "march fourth", "refused", "yes").Run();
        int before = rig.Said.Count();

        rig.Types("yes", "march fourth", "private").Run();

        rig.Said.Skip(before).Last().ShouldBe("All is taken.");
        rig.Events.OfType<NotTakenRecorded>().ShouldHaveSingleItem();
    }

    [Fact]
    public void Other_settings_begin_a_new_round_with_what_was_saved_and_say_so()
    {
        using SessionRig rig = new() { Remembers = true };
        rig.Types("room 12 bed b", "yes", "march fourth", "pulse 72").Run();
        int before = rig.Said.Count();

        rig.Dialogue = new DialogueSettings { PulseCountSeconds = 60 };
        rig.Run();

        rig.Said.Skip(before).First().ShouldBe("The round goes on. What was not saved is gone: say it again. Room and bed?");
        rig.Events.OfType<RoundStarted>().Count().ShouldBe(2);
    }

    [Fact]
    public void What_was_told_can_t_be_read_once_the_key_of_its_shift_is_destroyed_and_the_journal_holds()
    {
        using SessionRig rig = new() { Remembers = true };
        rig.Types("room 12 bed b", "yes", "march fourth", "pulse 72", "yes").Run();
        DialogueTold told = rig.Events.OfType<DialogueTold>().First();
        rig.Memory.Open(told).ShouldNotBeNull();

        rig.Keys.DestroyOverdue(rig.Clock.GetUtcNow().AddHours(20)).ShouldBe(0);
        rig.Keys.DestroyOverdue(rig.Clock.GetUtcNow().AddHours(33)).ShouldBe(1);

        rig.Memory.Open(told).ShouldBeNull();
        rig.Readings.ShouldHaveSingleItem();
        int before = rig.Said.Count();
        rig.Run();
        rig.Said.Skip(before).First().ShouldStartWith("The round goes on. What was not saved is gone");
    }
}
