using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Scenarios.Session;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Round;

/// <summary>The way a value is measured and confirmed, to the journal on the disk, with time that is simulated. Source: safety.md 1 to 3 and
/// 10 to 14.</summary>
public sealed class MeasuringScenarios
{
    private static readonly Listening Bed = new(ListeningKind.Readings);

    [Fact]
    public void Item_1_the_rest_is_announced_and_a_pressure_before_its_end_is_taken_with_its_minutes()
    {
        using SessionRig early = RoundHome.Rig().Types(RoundHome.Mary).TypesAfter(TimeSpan.FromMinutes(2), "blood pressure 124/76").Types("yes");
        early.Run();
        early.Readings.ShouldHaveSingleItem().Confirmed.Reading.How.MinutesRested.ShouldBe(2);

        using SessionRig rested = RoundHome.Rig().Types(RoundHome.Mary).TypesAfter(TimeSpan.FromSeconds(250), "temperature 98.6").Types("yes");
        rested.Run(quietAtTheEnd: TimeSpan.FromMinutes(2));
        rested.Said.ShouldContain("The rest is over. Blood pressure?");

        using SessionRig resting = RoundHome.Rig().Types([.. RoundHome.Mary, "was resting", "blood pressure 124/76", "yes"]);
        resting.Run();
        resting.Readings.ShouldHaveSingleItem().Confirmed.Reading.How.MinutesRested.ShouldBeNull();
    }

    [Fact]
    public void Item_2_a_machine_is_said_once_and_a_pulse_outside_the_limits_is_counted()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.John, "machine", "pulse 76", "yes", "next resident", .. RoundHome.Mary, "pulse 104", "104"]);
        rig.Run();
        rig.Readings.ShouldAllBe(r => r.Confirmed.Reading.How.Machine);
        rig.Last().ShouldBe("Saved. Count the pulse for a full 60 seconds.");
    }

    [Fact]
    public void Items_2_and_10_breaths_follow_the_pulse_by_a_tone_alone_for_sixty_seconds_and_both_are_read_back_as_counted()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "count"])
            .TypesAfter(TimeSpan.FromSeconds(36), "36").TypesAfter(TimeSpan.FromSeconds(64), "16").Types("yes", "yes");
        rig.Run();
        rig.Readings.Select(r => r.Confirmed.ReadBack.Text).ShouldBe(
            ["pulse, three six in thirty seconds, makes seven two", "respirations, one six in sixty seconds"]);
        SessionNote[] tones = [.. rig.Notes.OfType<SessionNote.Sounded>().Where(n => n.Tone is Tone.CountBegins or Tone.CountEnds)];
        tones.Length.ShouldBe(4);
        rig.Notes.OfType<SessionNote.Said>().ShouldNotContain(s => s.At > tones[2].At && s.At < tones[3].At);
    }

    [Fact]
    public void Item_3_with_the_stethoscope_in_the_ears_nothing_is_said_until_the_value()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "pressure"]).TypesAfter(TimeSpan.FromSeconds(90), "124/76").Types("yes");
        rig.Run();
        rig.Said.SkipWhile(s => s != "Ready.").Skip(1).First().ShouldBe("Blood pressure, one two four over seven six.");
        rig.Readings.ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(BloodPressure.FromMillimetresOfMercury(124, 76));
    }

    [Fact]
    public void Item_11_what_sounds_like_a_value_that_would_be_reported_is_said_again()
    {
        using SessionRig rig = RoundHome.Rig().Types(RoundHome.Mary).Says(Bed, "respirations thirteen")
            .Says(new Listening(ListeningKind.Value, VitalSign.Respirations), "one three");
        rig.Run();
        rig.Said.ShouldContain("Respirations, one three. Say the number again, digit by digit.");
        (RespiratoryRate, ConfirmedHow) kept = rig.Readings.Select(r => ((RespiratoryRate)r.Confirmed.Reading.Value, r.Confirmed.How)).ShouldHaveSingleItem();
        kept.ShouldBe((RespiratoryRate.FromPerMinute(13), ConfirmedHow.SaidAgain));
    }

    [Fact]
    public void Item_12_a_value_that_was_a_guess_first_is_kept_and_marked()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "about 80", "pulse 80", "yes"]);
        rig.Run();
        rig.Said.ShouldContain("A guess can't be saved. Count, or measure again.");
        rig.Readings.ShouldHaveSingleItem().Confirmed.Reading.How.SaidAsGuessFirst.ShouldBeTrue();
    }

    [Fact]
    public void Item_14_far_from_her_usual_value_is_said_again()
    {
        using SessionRig rig = RoundHome.Rig().Types(RoundHome.Mary).Says(Bed, "pulse one zero four");
        rig.Run();
        rig.Last().ShouldBe("Pulse, one zero four. Say the number again, digit by digit.");
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void Item_17_a_posture_test_is_on_order_with_a_second_person_and_each_pressure_knows_its_minute()
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, "posture test", "next resident", .. RoundHome.John, "posture test", "yes", "124/76", "yes", "standing"])
            .TypesAfter(TimeSpan.FromSeconds(62), "118/74").Types("yes").TypesAfter(TimeSpan.FromSeconds(118), "120/76").Types("yes");
        rig.Run();
        rig.Said.ShouldContain("A posture test is not ordered.");
        rig.Said.ShouldContain("Is a second person with you?");
        rig.Readings.Select(r => (r.Confirmed.Reading.How.Position, r.Confirmed.Reading.How.MinutesStanding)).ShouldBe(
            [(BodyPosition.Lying, null), (BodyPosition.Standing, 1), (BodyPosition.Standing, 3)]);
        rig.Last().ShouldBe("Saved. The posture test is done.");
    }

    [Fact]
    public void A_fall_of_the_pressure_on_standing_is_reported_with_both() // Source: clinical-rules 4.3, Freeman 2011.
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.John, "posture test", "yes", "138/80", "yes", "standing"])
            .TypesAfter(TimeSpan.FromSeconds(62), "112/70").Types("112/70", "no");
        rig.Run();
        ReportOpened report = rig.Events.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Resident).ShouldBe((ReportUrgency.ThisShift, "john"));
    }
}
