using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Store.Journaling;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>The session loop with simulated time: from the microphone's frames to the journal.</summary>
public sealed class SessionLoopTests
{
    private static readonly Listening Door = new(ListeningKind.Identity);
    private static readonly Listening YesNo = new(ListeningKind.YesNo);
    private static readonly Listening Bed = new(ListeningKind.Readings);
    private static readonly Listening PulseRead = new(ListeningKind.Confirmation, VitalSign.Pulse);

    [Fact]
    public void A_reading_goes_from_frames_to_the_journal()
    {
        using SessionRig rig = new();
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "yes").Says(Bed, "goodbye");
        rig.Run().ShouldBe(SessionEnd.Goodbye);
        ReadingRecorded reading = rig.Readings.ShouldHaveSingleItem();
        reading.Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(72));
        reading.Confirmed.ReadBack.Understood.Heard.LevelDecibels.ShouldNotBeNull().ShouldBeInRange(-9, -7);
        rig.Said.ShouldBe(["Room and bed?", "Ann Example? Look first.", "Day and month of birth?", "Ready.", "Pulse, seven two.", "Saved.", "Room 12 bed B: four not taken yet. Goodbye."]);
        rig.Engine!.Asked.Select(g => g.Name).ShouldBe(["identity", "confirmation#yes_no", "identity#second", "readings", "confirmation#pulse", "readings"]);
    }

    [Fact]
    public void Everything_spoken_can_be_typed_and_private_digits_identify()
    {
        using SessionRig rig = new() { Typed = ["room 12 bed b", "yes", "0304", "pulse 72", "yes", "118/76", "private", "98.6", "yes", "goodbye"] };
        rig.Run().ShouldBe(SessionEnd.Goodbye);
        rig.Readings.Select(r => r.Confirmed.Reading.Value).ShouldBe([HeartRate.FromPerMinute(72), BodyTemperature.FromFahrenheit(98.6m)]);
        rig.Readings.ShouldAllBe(r => r.Confirmed.ReadBack.Understood.Heard.Typed);
    }

    [Fact]
    public void An_event_of_another_program_that_cannot_be_read_ends_no_round_and_is_said_once_and_named()
    {
        SessionRig? there = null;
        using SessionRig rig = new()
        {
            Typed = ["room 12 bed b", "yes", "0304", "pulse 72", "yes", "respirations 18", "yes", "goodbye"],
            TypesAt = note =>
            {
                if (note is SessionNote.Said { Text: "Pulse, seven two." or "Respirations, one eight." })
                {
                    there!.Appended("""{"schema": 9, "entry": {"type": "of tomorrow"}}"""u8.ToArray());
                }

                return null;
            },
        };
        there = rig;

        rig.Run().ShouldBe(SessionEnd.Goodbye);

        rig.Readings.Count.ShouldBe(2);
        rig.Said.Count(text => text == "Saved.").ShouldBe(2);
        rig.Said.Count(text => text == "The record has an entry that I cannot read. Tell your supervisor.").ShouldBe(1);
        rig.Notes.OfType<SessionNote.NotRead>().SelectMany(n => n.Lines).ShouldAllBe(line => line.Contains("schema 9"));
        rig.Notes.OfType<SessionNote.NotRead>().Count().ShouldBe(2);
    }

    [Fact]
    public void A_typed_stop_silences_while_the_program_speaks()
    {
        using SessionRig rig = new() { Typed = ["room 12 bed b", "stop"] };
        rig.Run();
        rig.Notes.OfType<SessionNote.Listens>().Last().For.AnswerAwaited.ShouldBeFalse();
        rig.Said.Last().ShouldBe("Ann Example? Look first.");
    }

    [Fact]
    public void Saved_is_said_after_the_flush_and_never_before()
    {
        using SessionRig rig = new();
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "yes");
        rig.Run();
        int kept = rig.Notes.FindIndex(n => n is SessionNote.Kept k && k.Events.OfType<ReadingRecorded>().Any());
        int said = rig.Notes.FindIndex(n => n is SessionNote.Sounded { Tone: Tone.Saved });
        kept.ShouldBeGreaterThan(0);
        said.ShouldBeGreaterThan(kept);
    }

    [Fact]
    public void The_program_does_not_hear_its_own_voice_however_loud_it_is()
    {
        using SessionRig rig = new() { Leak = 1 };
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "yes").Says(Bed, "goodbye");
        rig.Run().ShouldBe(SessionEnd.Goodbye);
        rig.Engine!.Asked.Count.ShouldBe(6);

        // The aide's level is -8 dB, the program's voice has -6 dB.
        foreach (SessionNote.Heard heard in rig.Notes.OfType<SessionNote.Heard>())
        {
            heard.Event.ShouldBeOfType<DialogueEvent.Utterance>().LevelDecibels.ShouldNotBeNull().ShouldBeInRange(-9, -7);
        }
    }

    [Fact]
    public void The_tones_of_a_count_are_not_speech_however_loud_they_are()
    {
        using SessionRig rig = new() { Leak = 1 };
        Identified(rig).Says(Bed, "count").Run(quietAtTheEnd: TimeSpan.FromSeconds(34));

        rig.Notes.OfType<SessionNote.Sounded>().Count(n => n.Tone is Tone.CountBegins or Tone.CountEnds).ShouldBe(2);
        rig.Engine!.Asked.Count.ShouldBe(4);
    }

    [Fact]
    public void What_is_not_confirmed_is_not_recorded()
    {
        using SessionRig rig = new();
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "no");
        rig.Run().ShouldBe(SessionEnd.MicrophoneEnded);
        rig.Readings.ShouldBeEmpty();
        rig.Said.Last().ShouldBe("Say the pulse.");
    }

    [Fact]
    public void A_full_disk_reaches_the_ear_and_the_value_is_not_called_saved()
    {
        using SessionRig rig = new(new JournalOptions { PageLimit = 12 })
        {
            Encode = e => e is ReadingRecorded ? new byte[200_000] : JournalEventCodec.Encode(e),
        };
        Identified(rig).Says(Bed, "pulse seventy two").Says(PulseRead, "yes").Says(YesNo, "no");
        rig.Run();
        rig.Said.ShouldContain("Not saved. Try again?");
        rig.Said.Last().ShouldBe("Not saved. Write it on paper.");
        rig.Said.ShouldNotContain("Saved.");
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void After_eight_seconds_of_quiet_a_question_is_asked_again()
    {
        using SessionRig rig = new();
        rig.Run(quietAtTheEnd: TimeSpan.FromSeconds(9));
        SessionNote.Quiet played = rig.Notes.OfType<SessionNote.Quiet>().First();
        SessionNote.Said again = rig.Notes.OfType<SessionNote.Said>().ElementAt(1);
        (again.At - played.At).ShouldBe(TimeSpan.FromSeconds(8));
        again.Text.ShouldStartWith("I heard nothing.");
    }

    [Fact]
    public void Where_nothing_was_asked_the_next_reading_is_named_after_twenty_seconds()
    {
        using SessionRig rig = new();
        Identified(rig).Run(quietAtTheEnd: TimeSpan.FromSeconds(21));
        SessionNote.Said led = rig.Notes.OfType<SessionNote.Said>().Last();
        led.Text.ShouldBe("Temperature?");
        (led.At - rig.Notes.OfType<SessionNote.Quiet>().TakeWhile(q => q.At < led.At).Last().At).ShouldBe(TimeSpan.FromSeconds(20));
    }

    private static SessionRig Identified(SessionRig rig) =>
        rig.Says(Door, "room twelve bed b").Says(YesNo, "yes").Says(Door, "march fourth");
}
