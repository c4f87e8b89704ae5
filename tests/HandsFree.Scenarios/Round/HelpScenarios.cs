using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Scenarios.Session;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Round;

/// <summary>Help is not delayed and nothing is lost, to the journal on the disk. Source: safety.md 4, 6, 7 and 15 to 18.</summary>
public sealed class HelpScenarios
{
    [Fact]
    public void Item_15_a_danger_value_names_the_call_light_before_it_is_read_back_and_is_reported_at_once()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "oxygen 82", "82"]);
        rig.Run();
        string[] said = [.. rig.Said.SkipWhile(s => s != "Ready.").Skip(1)];
        said[0].ShouldBe(RoundHome.CallLight);
        said[1].ShouldBe("Oxygen, eight two. Say the number again, digit by digit.");
        rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem().Urgency.ShouldBe(ReportUrgency.Now);
        rig.Events.OfType<RecheckAsked>().ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.OxygenSaturation);
    }

    [Theory]
    [InlineData("nurse needed")]
    [InlineData("get help")]
    [InlineData("emergency")]
    public void Item_16_nobody_is_called_and_it_is_said(string words)
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, words]);
        rig.Run();
        rig.Last().ShouldBe("I cannot call. Use the call light.");
        rig.Events.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Fact]
    public void Item_17_could_not_obtain_twice_is_reported_now()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "pulse could not obtain", "yes", "pulse could not obtain", "yes"]);
        rig.Run();
        rig.Events.OfType<NotTakenRecorded>().Count().ShouldBe(2);
        rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem().Urgency.ShouldBe(ReportUrgency.Now);
        rig.Last().ShouldBe("Saved. Tell the nurse before you leave.");
    }

    [Theory]
    [InlineData("yes", false)]
    [InlineData("no", true)]
    public void Item_17_who_is_asleep_and_does_not_wake_to_the_voice_is_reported_now(string woke, bool reported)
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "pulse asleep", "yes", woke]);
        rig.Run();
        rig.Said.ShouldContain("Did the resident wake to your voice?");
        rig.Events.OfType<NotTakenRecorded>().ShouldHaveSingleItem();
        rig.Events.OfType<ReportOpened>().Count(r => r.Urgency == ReportUrgency.Now).ShouldBe(reported ? 1 : 0);
    }

    [Fact]
    public void Item_17_dizzy_ends_a_posture_test_and_is_reported_now_once()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.John, "posture test", "yes", "124/76", "yes", "standing", "he is dizzy", "yes", "dizzy"]);
        rig.Run(quietAtTheEnd: TimeSpan.FromMinutes(4));
        rig.Said.ShouldContain($"{RoundHome.CallLight} Help the resident sit or lie down. Dizzy or a fall, yes or no?");
        ReportOpened report = rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Situation).ShouldBe((ReportUrgency.Now, "dizzy or fell in the posture test"));
        rig.Said.ShouldNotContain("Now the blood pressure, standing.");
    }

    [Fact]
    public void Item_18_a_worry_is_a_report_without_a_number()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "i'm worried about her", "yes"]);
        rig.Run();
        ReportOpened report = rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Sign, report.Urgency).ShouldBe((null, ReportUrgency.ThisShift));
    }

    [Fact]
    public void Item_4_a_yes_from_another_mouth_is_asked_again()
    {
        using SessionRig rig = RoundHome.Rig().Types(RoundHome.Mary).Says(new Listening(ListeningKind.Readings), "pulse seven two")
            .SaysQuietly(new Listening(ListeningKind.Confirmation, VitalSign.Pulse), "yes");
        rig.Run();
        rig.Readings.ShouldBeEmpty();
        rig.Last().ShouldContain("Pulse, seven two.");
    }

    [Fact]
    public void Item_6_stop_silences_and_the_first_reading_after_it_may_be_late()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "stop"])
            .TypesAfter(TimeSpan.FromMinutes(3), "continue").Types("yes", "0303", "pulse 72", "before", "yes", "respirations 16", "yes", "yes");
        rig.Run();
        rig.Said.ShouldContain("Taken since you came back? Say yes or before.");
        Core.Observations.Attribution[] by = [.. rig.Readings.Select(r => r.Confirmed.By)];
        by.Select(b => b.Late).ShouldBe([true, false]);
        (by[0].EnteredAt - by[0].MeasuredAt).ShouldBeGreaterThan(TimeSpan.FromMinutes(3));
        rig.Notes.OfType<SessionNote.Listens>().Select(n => n.For.Kind).ShouldContain(ListeningKind.NowOrBefore);
    }

    [Fact]
    public void Another_aide_goes_on_with_nothing_lost_and_nothing_assumed()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "temperature 98.6", "yes", "pulse 44", "44", "respirations 16"]);
        rig.Run().ShouldBe(SessionEnd.MicrophoneEnded);
        rig.Types("respirations 16").Types(RoundHome.Mary).Types("72", "yes").Run(aide: "aide-2");
        rig.Said.ShouldContain("The round goes on. Recheck waits: room 12 bed B, pulse. Room and bed?");
        rig.Readings.Select(r => (r.Person, r.Confirmed.Reading.Value.Sign, r.IsRecheck)).ShouldBe(
        [
            ("aide", VitalSign.Temperature, false), ("aide", VitalSign.Pulse, false), ("aide-2", VitalSign.Pulse, true),
        ]);
    }

    [Fact]
    public void Item_7_rooms_under_isolation_come_last()
    {
        using SessionRig rig = RoundHome.Rig().Types("who is next");
        rig.Run();
        rig.Last().ShouldBe("Next: room 4, room 7 and room 8 bed A. 5 more.");
        string[] others = [.. RoundHome.Roster.Residents.Where(r => r.Id is not ("eve" or "carl")).SelectMany(r => new[]
        {
            $"room {r.Room}{(r.Bed is { } bed ? $" bed {bed}" : "")}", "yes", r.BandNumber ?? $"{r.Born:MMdd}", "not taken", "yes", "next resident",
        })];
        rig.Types([.. others, "who is next"]).Run();
        rig.Last().ShouldStartWith("Next: room 3, droplet isolation");
    }
}
