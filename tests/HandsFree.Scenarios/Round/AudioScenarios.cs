using HandsFree.App.Session;
using HandsFree.Audio.Wav;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Session;
using HandsFree.Speech.Sphinx;
using HandsFree.Speech.Voice;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Round;

/// <summary>From sound to the journal on the disk: a synthetic voice speaks, the engine sphinx hears, time is simulated. The items are those
/// of safety.md.</summary>
public sealed class AudioScenarios
{
    private static readonly string[] Mary = ["room twelve bed b", "yes", "march third"];

    [Fact]
    public void A_reading_goes_from_sound_to_the_journal()
    {
        using SessionRig rig = Spoken([.. Mary, "temperature nine eight point six", "yes"]);
        rig.Readings.ShouldHaveSingleItem(Log(rig)).Confirmed.Reading.Value.ShouldBe(BodyTemperature.FromFahrenheit(98.6m));
        rig.Last().ShouldBe("Saved.");
    }

    [Fact]
    public void Item_15_a_danger_value_calls_for_the_light_before_it_is_read_back()
    {
        using SessionRig rig = Spoken([.. Mary, "oxygen eight two", "eight two"]);
        string[] said = [.. rig.Said.SkipWhile(s => s != "Ready.").Skip(1)];
        said.Take(2).ShouldBe([RoundHome.CallLight, "Oxygen, eight two percent. Say the number again, digit by digit."], Log(rig));
        rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem(Log(rig)).Urgency.ShouldBe(ReportUrgency.Now);
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
    public void Item_4_chat_is_ignored_in_silence_and_a_quiet_yes_saves_nothing()
    {
        float[] chat = WavReader.Read(Path.Combine(Shared.Repository, "demo-audio-synthetic", "o370-bm_lewis.wav")).Samples;
        float[] quiet = [.. Say("yes").Select(s => s * 0.12f)];
        using SessionRig rig = Heard([.. Mary.Select(Say), chat, Say("pulse seven two"), quiet]);
        string[] said = [.. rig.Said.SkipWhile(s => s != "Ready.").Skip(1)];
        said[0].ShouldBe("Pulse, seven two.", Log(rig));
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void Items_6_after_a_stop_identity_is_asked_again_and_a_reading_may_be_late()
    {
        using SessionRig rig = Spoken([.. Mary, "stop", "continue", "yes", "march third", "pulse seven two", "before", "yes"]);
        rig.Readings.ShouldHaveSingleItem(Log(rig)).Confirmed.By.Late.ShouldBeTrue();
        rig.Events.OfType<ResidentIdentified>().Count().ShouldBe(2);
    }

    [Fact]
    public void Item_9_a_birthday_that_does_not_match_gives_no_reading()
    {
        using SessionRig rig = Spoken(["room twelve bed b", "yes", "march fourth", "may sixth", "june first", "pulse seven two", "yes"]);
        rig.Events.OfType<IdentificationFailed>().ShouldHaveSingleItem(Log(rig)).Resident.ShouldBe("mary");
        rig.Readings.ShouldBeEmpty();
    }

    private static SessionRig Spoken(string[] sentences) => Heard([.. sentences.Select(Say)]);

    private static SessionRig Heard(float[][] sounds)
    {
        SphinxHere.Needed();
        using var engine = new SphinxRecognizer(new SphinxOptions());
        var rig = new SessionRig { Roster = RoundHome.Roster, Real = engine };
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
