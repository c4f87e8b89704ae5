using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>One of every shape that a record can have.</summary>
internal static class Shapes
{
    public static IReadOnlyDictionary<string, JournalEvent[]> All { get; } = new Dictionary<string, JournalEvent[]>(
    [
        .. Each(),
        .. Enum.GetValues<VitalSign>().Select(sign => KeyValuePair.Create($"{sign} not taken", new JournalEvent[] { Made.NotTaken("a", sign, NotTakenReason.Refused) })),
        .. Enum.GetValues<NotTakenReason>().Select(reason => KeyValuePair.Create($"weight not taken, {reason}", new JournalEvent[] { Made.NotTaken("a", VitalSign.Weight, reason) })),
    ]);

    private static Dictionary<string, JournalEvent[]> Each() => new()
    {
        ["pulse counted"] = [Made.Recorded("a", Made.Pulse(72, new() { Counted = 72, CountedSeconds = 60 }))],
        ["pulse uneven of a machine"] = [Made.Recorded("a", Made.Pulse(88, new() { Uneven = true, Machine = true }))],
        ["temperature F by mouth"] = [Made.Recorded("a", Made.Reading(BodyTemperature.FromFahrenheit(99.4m), new() { Site = TemperatureSite.Mouth, MinutesSinceFoodOrDrink = 20 }))],
        ["temperature C in the ear"] = [Made.Recorded("a", Made.Reading(BodyTemperature.FromCelsius(37.2m), new() { Site = TemperatureSite.Ear }))],
        ["temperature in the armpit"] = [Made.Recorded("a", Made.Reading(BodyTemperature.FromCelsius(36.2m), new() { Site = TemperatureSite.Armpit }))],
        ["temperature of the forehead"] = [Made.Recorded("a", Made.Reading(BodyTemperature.FromCelsius(36.2m), new() { Site = TemperatureSite.Forehead }))],
        ["temperature in the rectum"] = [Made.Recorded("a", Made.Reading(BodyTemperature.FromCelsius(38.2m), new() { Site = TemperatureSite.Rectum }))],
        ["respirations counted"] = [Made.Recorded("a", Made.Reading(RespiratoryRate.FromPerMinute(16), new() { Counted = 16, CountedSeconds = 60 }))],
        ["pressure left sitting"] = [Made.Recorded("a", Made.Pressure(128, 76, new() { Arm = Arm.Left, Position = BodyPosition.Sitting, Cuff = CuffSize.Large, Medicine = MedicineTiming.Before }))],
        ["pressure right standing"] = [Made.Recorded("a", Made.Pressure(104, 79, new() { Arm = Arm.Right, Position = BodyPosition.Standing, MinutesStanding = 1, MinutesRested = 2 }))],
        ["pressure lying, very high"] = [Made.Recorded("a", Made.Pressure(222, 124, new() { Position = BodyPosition.Lying, Device = DeviceNote.Other }))],
        ["saturation on oxygen"] = [Made.Recorded("a", Made.Reading(OxygenSaturation.FromPercent(95), new() { Oxygen = new(2), Delivery = OxygenDelivery.NasalCannula }))],
        ["saturation on room air"] = [Made.Recorded("a", Made.Reading(OxygenSaturation.FromPercent(88), new() { Oxygen = OxygenSupply.RoomAir }))],
        ["saturation, flow unsaid"] = [Made.Recorded("a", Made.Reading(OxygenSaturation.FromPercent(95), new() { Oxygen = OxygenSupply.FlowUnsaid, Delivery = OxygenDelivery.Mask }))],
        ["weight in pounds"] = [Made.Recorded("a", Made.Reading(BodyWeight.FromPounds(154.3m)))],
        ["weight in kilograms"] = [Made.Recorded("a", Made.Reading(BodyWeight.FromKilograms(70.5m), new() { Device = DeviceNote.Own }))],
        ["pain said"] = [Made.Recorded("a", Made.Reading(PainScore.FromOfTen(7)))],
        ["pain observed"] = [Made.Recorded("a", Made.Reading(PainScore.FromOfTen(4), new() { Observed = true, SaidAsGuessFirst = true }))],
        ["late entry"] = [Made.Recorded("a", Made.Pulse(72), late: true), Amended("n", AmendmentKind.LateEntry, null, "a")],
        ["nothing of all was taken"] = [Made.NotTaken("a", null, NotTakenReason.NotInRoom)],


        ["not taken, undone"] = [Made.NotTaken("a", VitalSign.Weight, NotTakenReason.Refused), new EnteredInError("b", "aide-7", Made.At, "r1", "a", "undo")],
        ["corrected"] = [Made.Recorded("a", Made.Pulse(27)), Made.Recorded("b", Made.Pulse(72), amends: "a"), Amended("n", AmendmentKind.CorrectedValue, "a", "b")],
        ["more said"] = [Made.Recorded("a", Made.Pressure(128, 76)), Made.Recorded("b", Made.Pressure(128, 76, new() { Arm = Arm.Left }), amends: "a")],
        ["more said, undone"] = [Made.Recorded("a", Made.Pulse(72)), Made.Recorded("b", Made.Pulse(74), amends: "a"), new EnteredInError("c", "aide-7", Made.At, "r1", "b", "undo")],
        ["in error"] = [Made.Recorded("a", Made.Pulse(72)), new EnteredInError("b", "aide-7", Made.At.AddMinutes(1), "r1", "a", "undo")],
        ["of another resident"] =
        [
            Made.Recorded("a", Made.Pulse(72)), new EnteredInError("b", "nurse-1", Made.At, "r1", "a", "wrong resident, moved to r2: it was her neighbour"),
            Made.Recorded("c", Made.Pulse(72), resident: "r2"), Amended("n", AmendmentKind.WrongResident, "a", "c") with { MovedTo = "r2" },
        ],
        ["report open"] = [Made.Recorded("a", Made.Pulse(136)), Made.Report("b", ReportUrgency.Now, "a")],
        ["report through its life"] =
        [
            Made.Recorded("a", Made.Pulse(136)), Made.Report("b", ReportUrgency.ThisShift, "a"),
            new ReportTold("c", "aide-7", Made.At.AddMinutes(4), "b", Told.Nurse, "nurse-1", ToldHow.InPerson, Made.At.AddMinutes(3)),
            new ReportAcknowledged("d", "nurse-1", Made.At.AddMinutes(5), "b") { Advised = "count again at noon" },
            new PlanMade("e", "nurse-1", Made.At.AddMinutes(6), "r1", "b", LimitedValue.Pulse, null, 140, Made.At.AddHours(8), "rest in bed"),
            new ReportTold("f", "nurse-1", Made.At.AddMinutes(9), "b", Told.Prescriber, "Dr Example", ToldHow.ByPhone, Made.At.AddMinutes(8)),
            new ReportNoted("g", "nurse-1", Made.At.AddMinutes(10), "r1", "b", "a reading that this rests on was amended: slip"),
            new EnteredInError("h", "nurse-1", Made.At.AddMinutes(11), "r1", "f", "it was another doctor"),
            new ReportClosed("i", "nurse-1", Made.At.AddHours(5), "b", "88, as usual"),
        ],
        ["report in error"] = [Made.Recorded("a", Made.Pulse(136)), Made.Report("b", ReportUrgency.Now, "a"), new EnteredInError("c", "aide-7", Made.At, "r1", "b", "undo")],
    };

    private static ReadingAmended Amended(string id, AmendmentKind kind, string? was, string becomes) =>
        new(id, "nurse-1", Made.At.AddMinutes(20), "r1", kind, was, becomes, null, "mis-heard");
}
