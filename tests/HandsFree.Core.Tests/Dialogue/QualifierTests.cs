using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>How a reading was taken: said with it, before it, while it is read back, or after it.</summary>
public sealed class QualifierTests
{
    private const string Pressure = "blood pressure one two zero over eight zero";
    private const string ReadBack = "Blood pressure, one two zero over eight zero";

    [Fact]
    public void A_wrong_one_is_corrected_alone_and_the_number_stays()
    {
        Talk talk = Talk.WithMary().Go(Pressure + " left arm", "right arm");
        talk.Said.ShouldBe(ReadBack + ", right arm.");
        How(talk.Go("yes")).Arm.ShouldBe(Arm.Right);
    }

    [Fact]
    public void Cancel_drops_the_reading_with_them() =>
        Talk.WithMary().Go(Pressure + " left arm", "cancel").Journal.OfType<ReadingRecorded>().ShouldBeEmpty();

    [Fact]
    public void A_cuff_said_before_goes_with_the_pressure_and_not_with_the_next()
    {
        Talk talk = Talk.WithMary().Go("large cuff", Pressure);
        talk.Said.ShouldBe(ReadBack + ", large cuff.");
        talk.Go("yes", Pressure).Said.ShouldBe(ReadBack + ".");
    }

    [Fact]
    public void A_cuff_said_afterwards_amends_the_pressure() =>
        Talk.WithMary().Go(Pressure, "yes", "thigh cuff").Said.ShouldBe(ReadBack + ", thigh cuff.");

    [Fact]
    public void Before_medicine_goes_with_the_reading_that_comes_and_with_no_other()
    {
        Talk talk = Talk.WithMary().Go("before medicine", "pulse seventy two");
        talk.Said.ShouldBe("Pulse, seven two, before medicine.");
        How(talk.Go("yes")).Medicine.ShouldBe(MedicineTiming.Before);
        talk.Go("respirations one six").Said.ShouldBe("Respirations, one six.");
    }

    [Fact]
    public void Delivery_stands_beside_the_litres()
    {
        Talk talk = Talk.WithMary().Go("oxygen ninety two on two liters nasal cannula");
        talk.Said.ShouldBe("Oxygen, nine two, on two litres, nasal cannula.");
        How(talk.Go("mask", "on three liters", "yes")).ShouldBe(new Circumstances { Oxygen = new OxygenSupply(3), Delivery = OxygenDelivery.Mask });
    }

    [Fact]
    public void Litres_said_before_are_not_lost_by_the_mask() =>
        Talk.WithMary().Go("on two liters", "oxygen ninety two mask").Said.ShouldBe("Oxygen, nine two, on two litres, mask.");

    [Fact]
    public void A_mask_without_litres_is_oxygen() =>
        How(Talk.WithMary().Go("oxygen ninety two on room air", "mask", "yes")).Oxygen.ShouldBe(OxygenSupply.FlowUnsaid);

    [Fact]
    public void Room_air_takes_the_mask_away() =>
        How(Talk.WithMary().Go("oxygen ninety two on two liters mask", "on room air", "yes")).ShouldBe(new Circumstances { Oxygen = OxygenSupply.RoomAir });

    [Fact]
    public void The_usual_site_is_recorded_and_not_announced_another_one_is()
    {
        var usual = new UsualValue(LimitedValue.TemperatureFahrenheit, 98.2m) { Site = TemperatureSite.Ear };
        var roster = new Roster([TestHome.Roster.ById("r-7")! with { UsualValues = [usual] }]);
        Talk talk = new Talk(roster: roster).Go("room seven", "yes", "february twenty ninth", "temperature ninety eight six ear");
        talk.Said.ShouldBe("Temperature, nine eight point six.");
        How(talk.Go("yes")).Site.ShouldBe(TemperatureSite.Ear);
        talk.Go("temperature ninety eight six forehead").Said.ShouldBe("Temperature, nine eight point six, forehead.");
    }

    [Fact]
    public void Oxygen_that_was_said_is_always_read_back()
    {
        var roster = new Roster([TestHome.Roster.ById("r-7")! with { UsualOxygen = new OxygenSupply(2) }]);
        new Talk(roster: roster).Go("room seven", "yes", "february twenty ninth", "oxygen ninety five on two liters").Said
            .ShouldBe("Oxygen, nine five, on two litres.");
    }

    [Fact]
    public void All_of_it_comes_back_from_the_journal()
    {
        Talk talk = Talk.WithMary().Go(Pressure + " right arm lying thigh cuff", "other device", "after medicine", "yes");
        var entry = talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
        Circumstances back = ((ReadingRecorded)JournalEventCodec.Decode(JournalEventCodec.Encode(entry))).Confirmed.Reading.How;
        back.ShouldBe(new Circumstances
        {
            Arm = Arm.Right, Position = BodyPosition.Lying, Cuff = CuffSize.Thigh, Device = DeviceNote.Other, Medicine = MedicineTiming.After, MinutesRested = 0,
        });
    }

    private static Circumstances How(Talk talk) => talk.Journal.OfType<ReadingRecorded>().Last().Confirmed.Reading.How;
}
