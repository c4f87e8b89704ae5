using HandsFree.App.Checks;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Session;
using HandsFree.Speech.Voice;
using HandsFree.Speech.Words;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Round;

/// <summary>From sound to the journal on the disk: a synthetic voice speaks, the engine words hears, time is simulated. The items are those
/// of safety.md.</summary>
public sealed class AudioScenarios
{
    // The engine is weak in the letters of beds: this home has none.
    private static readonly Roster Home = new([new Resident { Id = "mary", Name = "Mary Miller", Room = 12, Born = new DateOnly(1941, 3, 3) }]);
    private static readonly string[] Mary = ["room twelve", "yes", "march third nineteen forty one"];

    [Fact]
    public void A_reading_goes_from_sound_to_the_journal()
    {
        using SessionRig rig = Heard([.. Mary.Select(Say), [.. BundledClip.Read().Samples], Say("yes")]);
        rig.Readings.ShouldHaveSingleItem(Log(rig)).Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(85));
        rig.Last().ShouldBe("Saved.");
    }

    [Fact]
    public void Item_15_a_danger_value_calls_for_the_light_at_the_first_hearing()
    {
        using SessionRig rig = Spoken([.. Mary, "oxygen eight two"]);
        rig.Said.SkipWhile(s => s != "Ready.").Skip(1).First().ShouldBe(RoundHome.CallLight, Log(rig));
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void Item_17_a_fall_is_asked_for_and_reported_now()
    {
        using SessionRig rig = Spoken([.. Mary, "she fell", "yes"]);
        rig.Said.ShouldContain($"{RoundHome.CallLight} Help the resident sit or lie down. Dizzy or a fall, yes or no?", Log(rig));
        rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem(Log(rig)).Urgency.ShouldBe(ReportUrgency.Now);
    }

    [Fact]
    public void Item_17_who_is_asleep_and_does_not_wake_is_reported_now()
    {
        using SessionRig rig = Spoken([.. Mary, "she is asleep", "yes", "no"]);
        rig.Events.OfType<NotTakenRecorded>().ShouldHaveSingleItem(Log(rig));
        rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem(Log(rig)).Urgency.ShouldBe(ReportUrgency.Now);
    }

    [Fact]
    public void Item_4_a_yes_from_another_mouth_saves_nothing()
    {
        float[] quiet = [.. Say("yes").Select(s => s * 0.2f)];
        using SessionRig rig = Heard([.. Mary.Select(Say), Say("pulse seven two"), quiet]);
        rig.Said.SkipWhile(s => s != "Ready.").Skip(1).ShouldNotBeEmpty(Log(rig));
        rig.Last().ShouldStartWith("Was that you? Pulse, ", Case.Sensitive, Log(rig));
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void Item_6_after_a_stop_identity_is_asked_again_and_a_reading_may_be_late()
    {
        // flite's short "stop" and "before" are not words to the engine; those of espeak-ng are
        Assert.SkipWhen(EspeakVoice.WhyNot() is not null, EspeakVoice.WhyNot() ?? "");
        EspeakVoice voice = new("en-us");
        string[] sentences = [.. Mary, "stop", "continue", "yes", "march third nineteen forty one", "pulse seven two", "before", "yes"];
        using SessionRig rig = Heard([.. sentences.Select(words => voice.Speak(words).Samples.ToArray())]);
        rig.Readings.ShouldHaveSingleItem(Log(rig)).Confirmed.By.Late.ShouldBeTrue(Log(rig));
        rig.Events.OfType<ResidentIdentified>().Count().ShouldBe(2);
    }

    [Fact]
    public void Item_9_a_birthday_that_does_not_match_gives_no_reading()
    {
        using SessionRig rig = Spoken(["room twelve", "yes", "march fourth", "may sixth", "june first", "pulse seven two", "yes"]);
        rig.Events.OfType<IdentificationFailed>().ShouldHaveSingleItem(Log(rig)).Resident.ShouldBe("mary");
        rig.Readings.ShouldBeEmpty();
    }

    private static SessionRig Spoken(string[] sentences) => Heard([.. sentences.Select(Say)]);

    private static SessionRig Heard(float[][] sounds)
    {
        using var engine = WordsRecognizer.Open();
        var rig = new SessionRig { Roster = Home, Real = engine };
        rig.Sounds(sounds).Run();
        return rig;
    }

    private static float[] Say(string words)
    {
        Assert.SkipWhen(FliteVoice.WhyNot() is not null, FliteVoice.WhyNot() ?? "");
        return [.. new FliteVoice().Speak(words).Samples];
    }

    private static string Log(SessionRig rig) => string.Join('\n', rig.Notes.Select(n => n switch
    {
        SessionNote.Said said => $"program: {said.Text}",
        SessionNote.Heard { Event: DialogueEvent.Utterance heard } => $"heard: {heard.Words}",
        SessionNote.Heard heard => $"heard: {heard.Event}",
        _ => "",
    }).Where(line => line.Length > 0));
}
