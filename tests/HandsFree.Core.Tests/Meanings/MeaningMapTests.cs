using System.Text.Json;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Language.Meaning;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Meanings;

public sealed class MeaningMapTests
{
    public static TheoryData<string, Meaning> Known => new()
    {
        { """{"kind":"pulse","value":76}""", Said(HeartRate.FromPerMinute(76)) },
        { """{"kind":"temperature","value":98.6}""", Said(BodyTemperature.FromFahrenheit(98.6m)) },
        { """{"kind":"temperature","value":37.2}""", Said(BodyTemperature.FromCelsius(37.2m)) },
        { """{"kind":"temperature","value":40,"unit":"F"}""", Said(BodyTemperature.FromFahrenheit(40m)) },
        { """{"kind":"blood pressure","value":[118,76],"qualifiers":["left arm","sitting"]}""", Said(BloodPressure.FromMillimetresOfMercury(118, 76), new() { Arm = Arm.Left, Position = BodyPosition.Sitting }) },
        { """{"kind":"blood pressure","value":[118,76],"qualifiers":[null,"sitting"]}""", Said(BloodPressure.FromMillimetresOfMercury(118, 76), new() { Position = BodyPosition.Sitting }) },
        { """{"kind":"oxygen","value":92,"qualifiers":["on two liters"]}""", Said(OxygenSaturation.FromPercent(92), new() { Oxygen = new OxygenSupply(2) }) },
        { """{"kind":"weight","value":154.3,"unit":"kg"}""", Said(BodyWeight.FromKilograms(154.3m)) },
        { """{"kind":"weight","value":154.3}""", Said(BodyWeight.FromPounds(154.3m)) },
        { """{"kind":"pain","value":7}""", Said(PainScore.FromOfTen(7)) },
        { """{"kind":"pulse","counted":44,"seconds":30}""", Said(HeartRate.FromPerMinute(88), new() { Counted = 44, CountedSeconds = 30 }) },
        { """{"kind":"temperature","value":70}""", new Meaning.NotPossible(VitalSign.Temperature, new SpokenNumber(70), "no temperature can be this number") },
        { """{"value":82}""", new Meaning.ValueAlone(new SpokenNumber(82)) },
        { """{"value":[118,76]}""", new Meaning.ValueAlone(new SpokenNumber(118, 76)) },
        { """{"confirm":true}""", new Meaning.Answer(true) },
        { """{"corrected":57}""", new Meaning.Correction(new SpokenNumber(57)) },
        { """{"count":44}""", new Meaning.CountSaid(44) },
        { """{"qualifier":"by mouth"}""", new Meaning.Qualifier(new() { Site = TemperatureSite.Mouth }) },
        { """{"qualifier":"on oxygen","litres":2}""", new Meaning.Qualifier(new() { Oxygen = new OxygenSupply(2) }) },
        { """{"word":"irregular"}""", new Meaning.Counting(CountWord.Uneven) },
        { """{"word":"sixty seconds"}""", new Meaning.Counting(CountWord.SixtySeconds) },
        { """{"not taken":"declined"}""", new Meaning.NotTaken(NotTakenReason.Declined) },
        { """{"kind":"pulse","not taken":"refused"}""", new Meaning.NotTaken(NotTakenReason.Refused, VitalSign.Pulse) },
        { """{"command":"not available"}""", new Meaning.NotTaken(NotTakenReason.NotInRoom) },
        { """{"command":"nurse needed"}""", new Meaning.Command(CommandWord.NurseNeeded) },
        { """{"hedge":true}""", new Meaning.Hedge() },
        { """{"room":12,"bed":"b"}""", new Meaning.Place(12, "b") },
        { """{"room":12,"bed":null}""", new Meaning.Place(12, null) },
        { """{"born":"1945-10-25"}""", new Meaning.BirthDate(10, 25, 1945) },
        { """{"born":"02-29"}""", new Meaning.BirthDate(2, 29, null) },
        { """{"band":"4711"}""", new Meaning.BandNumber("4711") },
        { """{"query":"room","room":12}""", new Meaning.Query(QueryKind.Room, 12) },
        { """{"query":"room","room":12,"bed":"b"}""", new Meaning.Query(QueryKind.Room, 12) { Bed = "b" } },
        { """{"query":"last pulse"}""", new Meaning.Query(QueryKind.LastValue, null) { Sign = VitalSign.Pulse } },
        { """{"query":"last","kind":"oxygen","room":4}""", new Meaning.Query(QueryKind.LastValue, 4) { Sign = VitalSign.OxygenSaturation } },
        { """{"query":"since","shift":"last"}""", new Meaning.Query(QueryKind.Since, null) { Since = new SinceSaid.Shift(IsLast: true) } },
        { """{"query":"since","clock":12,"hour":3,"minute":30}""", new Meaning.Query(QueryKind.Since, null) { Since = new SinceSaid.Clock(3, 30, OfTwelve: true) } },
        { """{"told":"prescriber"}""", new Meaning.Query(QueryKind.Told, null) { Whom = Core.Reports.Told.Prescriber } },
        { """{"query":"shift list"}""", new Meaning.Query(QueryKind.Handover, null) },
        { """{"worried":true}""", new Meaning.Worried() },
    };

    [Theory]
    [MemberData(nameof(Known))]
    public void A_record_of_the_grammars_is_understood(string json, Meaning meaning) => MeaningMap.From(Parse(json)).ShouldBe(meaning);

    [Theory]
    [InlineData("""{"kind":"height","value":170}""")]
    [InlineData("""{"kind":"pulse","value":"many"}""")]
    [InlineData("""{"kind":"pulse","value":70,"qualifiers":["upside down"]}""")]
    [InlineData("""{"word":"regular"}""")]
    [InlineData("""{"command":"scratch that"}""")]
    [InlineData("""{"born":"02-30"}""")]
    [InlineData("""{"band":"47x"}""")]
    [InlineData("""{"room":12,"bed":"z"}""")]
    [InlineData("""{"query":"room"}""")]
    [InlineData("""{}""")]
    [InlineData("""7""")]
    public void A_record_of_none_of_our_shapes_means_nothing(string json) => MeaningMap.From(Parse(json)).ShouldBeNull();

    [Theory]
    [InlineData("""{"kind":"pulse","value":401}""")]
    [InlineData("""{"kind":"pulse","value":70.5}""")]
    [InlineData("""{"kind":"blood pressure","value":120}""")]
    [InlineData("""{"kind":"pulse","value":[120,80]}""")]
    [InlineData("""{"kind":"temperature","value":98.65}""")]
    [InlineData("""{"kind":"respirations","counted":150,"seconds":30}""")]
    [InlineData("""{"count":1000}""")]
    [InlineData("""{"room":1000,"bed":null}""")]
    public void A_number_that_cannot_be_is_kept_so_that_it_can_be_repeated(string json) =>
        MeaningMap.From(Parse(json)).ShouldBeOfType<Meaning.NotPossible>().Why.ShouldNotBeEmpty();

    private static Meaning.ReadingSaid Said(Quantity value, Circumstances? how = null) => new(new Reading(value, how ?? Circumstances.Unsaid));

    private static SemanticValue Parse(string json) => From(JsonDocument.Parse(json).RootElement);

    private static SemanticValue From(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Number => new SemanticNumber(element.GetDecimal()),
        JsonValueKind.String => new SemanticText(element.GetString()!),
        JsonValueKind.True or JsonValueKind.False => new SemanticTruth(element.GetBoolean()),
        JsonValueKind.Array => new SemanticList([.. element.EnumerateArray().Select(From)]),
        JsonValueKind.Object => element.EnumerateObject().Aggregate(SemanticRecord.Empty, (r, p) => r.With(p.Name, From(p.Value))),
        _ => SemanticNothing.Only,
    };
}
