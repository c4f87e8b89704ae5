using HandsFree.App.Session;
using HandsFree.Audio.Devices;
using HandsFree.Core.Dialogue;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>A microphone that goes and comes back, and one with a key.</summary>
public sealed class HardwareTests
{
    private static readonly Listening Door = new(ListeningKind.Identity);

    [Fact]
    public void A_lost_microphone_is_said_the_state_is_kept_and_the_same_question_is_asked_again()
    {
        using SessionRig rig = new()
        {
            Happenings =
            [
                (TimeSpan.FromSeconds(3), loop => loop.DeviceChanged(SoundFlow.Capture, "\"headset\" is gone; plug it in again")),
                (TimeSpan.FromSeconds(60), loop => loop.DeviceChanged(SoundFlow.Capture, null)),
            ],
        };
        rig.Run(quietAtTheEnd: TimeSpan.FromSeconds(58));

        rig.Said.Take(3).ShouldBe(["Room and bed?", "The microphone is gone. Plug it in again, or use the keys.", "The microphone is back. Room and bed?"]);
        rig.Notes.OfType<SessionNote.Microphone>().Select(m => m.State).ShouldBe([MicrophoneState.Open, MicrophoneState.Lost, MicrophoneState.Open]);
    }

    [Fact]
    public void While_the_microphone_is_gone_no_question_is_given_up()
    {
        using SessionRig rig = new() { Happenings = [(TimeSpan.FromSeconds(1), loop => loop.DeviceChanged(SoundFlow.Capture, "gone"))] };
        rig.Run(quietAtTheEnd: TimeSpan.FromMinutes(2));

        rig.Said.Count().ShouldBe(2);
    }

    [Fact]
    public void Nothing_is_said_of_a_lost_microphone_while_breaths_are_counted()
    {
        Hardware hardware = new(hasMicrophone: true, new TalkSwitch(needed: false));
        hardware.Take(new SessionEvent.DeviceChanged(SoundFlow.Capture, "gone"), null);

        hardware.Say(counting: true).ShouldBeNull();
        hardware.Say(counting: false).ShouldNotBeNull();
        hardware.Say(counting: false).ShouldBeNull();
    }

    [Fact]
    public void With_press_to_talk_nothing_is_heard_before_the_key()
    {
        using SessionRig rig = new() { PressToTalk = true };
        rig.Says(Door, "room twelve bed b").Run();

        rig.Engine!.Asked.ShouldBeEmpty();
        rig.Said.ShouldBe(["Room and bed?"]);
    }

    [Fact]
    public void The_key_silences_the_program_and_opens_the_microphone_for_one_utterance()
    {
        using SessionRig rig = new() { PressToTalk = true, Happenings = [(TimeSpan.FromMilliseconds(300), loop => loop.Talk())] };
        rig.Says(Door, "room twelve bed b").Run();

        rig.Engine!.Asked.Count.ShouldBe(1);
        rig.Notes.OfType<SessionNote.Quiet>().First().At.ShouldBeLessThan(rig.Notes[0].At + TimeSpan.FromMilliseconds(400));
        rig.Notes.OfType<SessionNote.Microphone>().Select(m => m.State).ShouldBe([MicrophoneState.Closed, MicrophoneState.Open, MicrophoneState.Closed]);
        rig.Said.Last().ShouldBe("Ann Example? Look first.");
    }

    [Fact]
    public void A_text_is_spoken_sentence_by_sentence()
    {
        Sentences.Of("Saved. Respirations, one six in sixty seconds.").ShouldBe(["Saved.", "Respirations, one six in sixty seconds."]);
        Sentences.Of("Ann Example? Look first.").ShouldBe(["Ann Example?", "Look first."]);
        Sentences.Of("Temperature, nine eight point six").ShouldBe(["Temperature, nine eight point six"]);
    }
}
