using FsCheck;
using FsCheck.Fluent;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Exchange.Tests;

/// <summary>Readings of every kind, with what can be said about each.</summary>
public sealed class AnyReading
{
    public static Arbitrary<Reading> Readings() => Arb.From(
        from sign in Gen.Elements(Enum.GetValues<VitalSign>())
        from value in Value(sign)
        from site in Maybe<TemperatureSite>()
        from arm in Maybe<Arm>()
        from position in Maybe<BodyPosition>()
        from supply in Gen.Elements<OxygenSupply?>(null, OxygenSupply.RoomAir, OxygenSupply.FlowUnsaid, new(2), new(0.5m))
        from delivery in Maybe<OxygenDelivery>()
        from cuff in Maybe<CuffSize>()
        from device in Maybe<DeviceNote>()
        from medicine in Maybe<MedicineTiming>()
        from flags in Gen.ArrayOf(Gen.Elements(true, false), 5)
        from minutes in Gen.ArrayOf(Gen.OneOf(Gen.Constant((int?)null), Gen.Choose(0, 90).Select(n => (int?)n)), 5)
        select new Reading(value, new Circumstances
        {
            Site = sign == VitalSign.Temperature ? site : null,
            Arm = sign == VitalSign.BloodPressure ? arm : null,
            Position = sign == VitalSign.BloodPressure ? position : null,
            Oxygen = sign == VitalSign.OxygenSaturation ? supply : null,
            Delivery = sign == VitalSign.OxygenSaturation && supply is { IsRoomAir: false } ? delivery : null,
            Cuff = sign == VitalSign.BloodPressure ? cuff : null,
            Device = device,
            Medicine = medicine,
            Observed = sign == VitalSign.Pain && flags[0],
            Uneven = sign == VitalSign.Pulse && flags[1],
            Machine = flags[2],
            SaidAsGuessFirst = flags[3],
            TooEarly = flags[4],
            Counted = sign is VitalSign.Pulse or VitalSign.Respirations ? minutes[0] : null,
            CountedSeconds = sign is VitalSign.Pulse or VitalSign.Respirations && minutes[0] is not null ? 30 : null,
            MinutesSinceFoodOrDrink = sign == VitalSign.Temperature ? minutes[2] : null,
            MinutesRested = sign == VitalSign.BloodPressure ? minutes[3] : null,
            MinutesStanding = sign == VitalSign.BloodPressure ? minutes[4] : null,
        }));

    private static Gen<Quantity> Value(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => Gen.OneOf(
            Gen.Choose(0, 1500).Select(n => (Quantity)BodyTemperature.FromFahrenheit(n / 10m)),
            Gen.Choose(0, 600).Select(n => (Quantity)BodyTemperature.FromCelsius(n / 10m))),
        VitalSign.Pulse => Gen.Choose(0, HeartRate.Greatest).Select(n => (Quantity)HeartRate.FromPerMinute(n)),
        VitalSign.Respirations => Gen.Choose(0, RespiratoryRate.Greatest).Select(n => (Quantity)RespiratoryRate.FromPerMinute(n)),
        VitalSign.BloodPressure => from systolic in Gen.Choose(0, BloodPressure.Greatest)
                                   from diastolic in Gen.Choose(0, BloodPressure.Greatest)
                                   select (Quantity)BloodPressure.FromMillimetresOfMercury(systolic, diastolic),
        VitalSign.OxygenSaturation => Gen.Choose(0, OxygenSaturation.Greatest).Select(n => (Quantity)OxygenSaturation.FromPercent(n)),
        VitalSign.Weight => Gen.OneOf(
            Gen.Choose(0, 9999).Select(n => (Quantity)BodyWeight.FromPounds(n / 10m)),
            Gen.Choose(0, 9999).Select(n => (Quantity)BodyWeight.FromKilograms(n / 10m))),
        _ => Gen.Choose(0, PainScore.Greatest).Select(n => (Quantity)PainScore.FromOfTen(n)),
    };

    private static Gen<T?> Maybe<T>()
        where T : struct, Enum => Gen.OneOf(Gen.Constant((T?)null), Gen.Elements(Enum.GetValues<T>()).Select(v => (T?)v));
}
