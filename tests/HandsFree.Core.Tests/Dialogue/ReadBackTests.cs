using HandsFree.Core.Dialogue;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Source: clinical-rules 7.4, R-01 to R-09; each digit by itself after ICAO Annex 10 volume II, 5.2.1.4.1.</summary>
public sealed class ReadBackTests
{
    public static TheoryData<string, Reading, string> Readings => new()
    {
        { "R-01", Of(HeartRate.FromPerMinute(72)), "pulse, seven two" },
        { "R-02", Of(BloodPressure.FromMillimetresOfMercury(130, 80)), "blood pressure, one three zero over eight zero" },
        { "R-03", Of(BloodPressure.FromMillimetresOfMercury(118, 76)), "blood pressure, one one eight over seven six" },
        { "R-04", Of(BodyTemperature.FromFahrenheit(98.6m), new() { Site = TemperatureSite.Mouth }), "temperature, nine eight point six Fahrenheit, mouth" },
        { "R-05", Of(RespiratoryRate.FromPerMinute(13)), "respirations, one three" },
        { "R-06", Of(RespiratoryRate.FromPerMinute(30)), "respirations, three zero" },
        { "R-07", Of(OxygenSaturation.FromPercent(92), new() { Oxygen = new OxygenSupply(2) }), "oxygen, nine two percent, on two litres" },
        { "R-08", Of(BodyWeight.FromPounds(154.3m)), "weight, one five four point three pounds" },
        { "R-09", Of(BloodPressure.FromMillimetresOfMercury(118, 70)), "blood pressure, one one eight over seven zero" },
        { "safety 10", Of(HeartRate.FromPerMinute(88), new() { Counted = 44, CountedSeconds = 30 }), "pulse, four four in thirty seconds, makes eight eight" },
        { "no source", Of(HeartRate.FromPerMinute(72), new() { Counted = 72, CountedSeconds = 60, Uneven = true }), "pulse, seven two in sixty seconds, uneven" },
        { "no source", Of(BodyTemperature.FromCelsius(37m), new() { Site = TemperatureSite.Ear }), "temperature, three seven Celsius, ear" },
        { "no source", Of(OxygenSaturation.FromPercent(100), new() { Oxygen = OxygenSupply.RoomAir }), "oxygen, one zero zero percent, on room air" },
        { "no source", Of(PainScore.FromOfTen(10)), "pain, one zero" },
        { "no source", Of(BodyWeight.FromKilograms(70m)), "weight, seven zero kilograms" },
        { "no source", Of(BloodPressure.FromMillimetresOfMercury(120, 80), new() { Arm = Arm.Right, Position = BodyPosition.Lying }), "blood pressure, one two zero over eight zero, right arm, lying" },
        { "no source", Of(OxygenSaturation.FromPercent(92), new() { Oxygen = new OxygenSupply(2), Delivery = OxygenDelivery.NasalCannula }), "oxygen, nine two percent, on two litres, nasal cannula" },
        { "no source", Of(BloodPressure.FromMillimetresOfMercury(120, 80), new() { Arm = Arm.Left, Cuff = CuffSize.Large }), "blood pressure, one two zero over eight zero, left arm, large cuff" },
        { "no source", Of(HeartRate.FromPerMinute(72), new() { Device = DeviceNote.Other, Medicine = MedicineTiming.Before }), "pulse, seven two, other device, before medicine" },
    };

    private static readonly string[] Commands =
    [
        "yes", "no", "wrong", "save", "cancel", "help", "options", "repeat", "back", "stop", "pause", "continue", "next", "previous", "undo",
        "goodbye", "done", "count", "correct", "oh",
    ];

    [Theory]
    [MemberData(nameof(Readings))]
    public void A_reading_is_read_back_digit_by_digit(string source, Reading reading, string text) =>
        ReadBackTexts.Of(reading).ShouldBe(text, source);

    [Theory]
    [MemberData(nameof(Readings))]
    public void No_read_back_holds_a_command_word(string source, Reading reading, string text)
    {
        ReadBackTexts.Of(reading).Split([' ', ',', '.']).ShouldNotContain(w => Commands.Contains(w), source);
        text.ShouldNotBeEmpty();
    }

    [Fact]
    public void Nor_does_the_read_back_of_what_was_not_taken()
    {
        foreach (var reason in Enum.GetValues<Core.Meanings.NotTakenReason>())
        {
            NotTakenTexts.ReadBack(VitalSign.Pulse, reason).Split([' ', ',']).ShouldNotContain(w => Commands.Contains(w));
        }
    }

    [Fact]
    public void Every_confusable_pair_has_its_partner_both_ways()
    {
        // Source: clinical-rules 7.3.
        ConfusablePairs.Partners(RespiratoryRate.FromPerMinute(13)).ShouldBe([RespiratoryRate.FromPerMinute(30)]);
        ConfusablePairs.Partners(RespiratoryRate.FromPerMinute(30)).ShouldBe([RespiratoryRate.FromPerMinute(13)]);
        ConfusablePairs.Partners(BloodPressure.FromMillimetresOfMercury(118, 70)).ShouldBe(
            [BloodPressure.FromMillimetresOfMercury(180, 70)]);
        ConfusablePairs.Partners(BodyWeight.FromPounds(219m)).ShouldBe([BodyWeight.FromPounds(290m)]);
        ConfusablePairs.Partners(HeartRate.FromPerMinute(72)).ShouldBeEmpty();
    }

    private static Reading Of(Quantity value, Circumstances? how = null) => new(value, how ?? Circumstances.Unsaid);
}
