using System.Globalization;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>Everything that can be said: every kind of meaning, every word of each, every number that can be spoken as a value of a sign.</summary>
internal sealed class AnySaying(Random chance)
{
    /// <summary>One of all meanings, each kind as likely as the next; goodbye rarely, for it ends the round.</summary>
    public Meaning Anything() => chance.Next(18) switch
    {
        0 => Reading(),
        1 => new Meaning.ValueAlone(Number(Sign())),
        2 => new Meaning.Answer(chance.Next(2) == 0),
        3 => new Meaning.Correction(Number(Sign())),
        4 => new Meaning.CountSaid(chance.Next(0, 121)),
        5 => new Meaning.Qualifier(How()),
        6 => new Meaning.Counting(Any<CountWord>()),
        7 => new Meaning.AboutRound(Any<RoundWord>()),
        8 => new Meaning.NotTaken(Any<NotTakenReason>(), chance.Next(2) == 0 ? null : Sign()),
        9 => new Meaning.Hedge(chance.Next(2) == 0 ? null : Sign()),
        10 => new Meaning.Command(Any<CommandWord>() is var word && word == CommandWord.Goodbye && chance.Next(3) > 0 ? CommandWord.Repeat : word),
        11 => Place(),
        12 => Birthday(),
        13 => Band(),
        14 => Query(),
        15 => new Meaning.Worried(),
        16 => new Meaning.BedAlone(Pick("a", "b", "c")),
        _ => new Meaning.NotPossible(chance.Next(2) == 0 ? null : Sign(), Number(Sign()), "a test"),
    };

    /// <summary>A reading of any sign; mostly near a limit of the test's rules, else any that can be.</summary>
    public Meaning.ReadingSaid Reading()
    {
        VitalSign sign = Sign();
        Quantity value = QuantityFrom.Number(sign, Number(sign), sign == VitalSign.Weight ? "lb" : null) ?? HeartRate.FromPerMinute(chance.Next(HeartRate.Greatest + 1));
        return new(new Reading(value, chance.Next(3) == 0 ? How() : Circumstances.Unsaid));
    }

    /// <summary>A number as it may be spoken for a sign, also one that it can't be.</summary>
    public SpokenNumber Number(VitalSign sign) => chance.Next(3) > 0 ? Near(sign) : sign switch
    {
        VitalSign.BloodPressure => new(chance.Next(BloodPressure.Greatest + 1), chance.Next(BloodPressure.Greatest + 1)),
        VitalSign.Temperature => new(chance.Next(0, 1501) / 10m),
        VitalSign.Weight => new(chance.Next(0, 10000) / 10m),
        _ => new(chance.Next(0, 401)),
    };

    public VitalSign Sign() => Any<VitalSign>();

    public Meaning.Place Place() => new(Pick(12, 12, 4, 7, 99, chance.Next(1, 400)), Pick<string?>("a", "b", "b", null));

    public Meaning.BirthDate Birthday() => chance.Next(4) switch
    {
        0 => new(chance.Next(1, 13), chance.Next(1, 29), Pick<int?>(null, 1941)),
        1 => new(3, 3, Pick<int?>(null, 1941, 1942)),
        2 => new(1, 9, Pick<int?>(null, 1944)),
        _ => Pick(new Meaning.BirthDate(2, 29, null), new Meaning.BirthDate(10, 25, null)),
    };

    public Meaning.BandNumber Band() => new(Pick("4711", "4711", "0303", chance.Next(10000).ToString("0000", CultureInfo.InvariantCulture)));

    public Meaning.Query Query() => new(Any<QueryKind>(), Pick<int?>(null, 12, 4))
    {
        Bed = Pick<string?>(null, "b"),
        Sign = Pick<VitalSign?>(null, Sign()),
        Since = Pick<SinceSaid?>(null, new SinceSaid.Shift(chance.Next(2) == 0), new SinceSaid.Clock(chance.Next(1, 13), 0, OfTwelve: true)),
        Whom = Pick<Told?>(null, Any<Told>()),
    };

    public Circumstances How() => chance.Next(9) switch
    {
        0 => new() { Site = Any<TemperatureSite>() },
        1 => new() { Arm = Any<Arm>() },
        2 => new() { Position = Any<BodyPosition>() },
        3 => new() { Oxygen = Pick(OxygenSupply.RoomAir, OxygenSupply.FlowUnsaid, new OxygenSupply(chance.Next(1, 16))), Delivery = Pick<OxygenDelivery?>(null, Any<OxygenDelivery>()) },
        4 => new() { Cuff = Any<CuffSize>() },
        5 => new() { Device = Any<DeviceNote>(), Medicine = Any<MedicineTiming>() },
        6 => new() { Observed = true },
        7 => new() { Uneven = true },
        _ => new() { Machine = true },
    };

    public T Any<T>()
        where T : struct, Enum => Pick(Enum.GetValues<T>());

    public T Pick<T>(params T[] items) => items[chance.Next(items.Length)];

    // Either side of the limits of the test's rules, and what sounds like it.
    private SpokenNumber Near(VitalSign sign) => sign switch
    {
        VitalSign.Pulse => new(Pick(16, 19, 20, 38, 39, 40, 44, 49, 50, 60, 70, 72, 110, 111, 115, 118, 130, 150, 250, 251)),
        VitalSign.Respirations => new(Pick(2, 3, 4, 7, 8, 9, 10, 13, 15, 16, 18, 26, 28, 29, 30, 31, 40, 50, 60, 61)),
        VitalSign.Temperature => new(Pick(36.6m, 45m, 84.9m, 97.8m, 98.6m, 100m, 100.1m, 101.2m, 110.1m)),
        VitalSign.BloodPressure => Pick(new(118, 70), new(180, 70), new(181, 70), new(118, 118), new(118, 130), new(190, 200), new SpokenNumber(190, 70)),
        VitalSign.OxygenSaturation => new(Pick(49, 50, 82, 84, 85, 92, 97, 100, 101)),
        VitalSign.Weight => new(Pick(113m, 130m, 150.5m)),
        _ => new(Pick(0, 5, 10, 11)),
    };
}
