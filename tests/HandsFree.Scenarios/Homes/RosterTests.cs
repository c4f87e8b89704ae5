using HandsFree.App.Homes;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Homes;

public sealed class RosterTests
{
    private const string WholeResident = """
        { "residents": [ {
          "id": "r1", "name": "Ada Quill", "room": 12, "bed": "a", "unit": "East", "born": "1931-03-09", "bandNumber": "0471",
          "orderedLimits": [
            { "value": "systolic", "least": 100, "greatest": 160, "orderedBy": "Dr Invented", "orderedOn": "2026-01-02", "until": "2026-03-05T07:00" },
            { "value": "weight", "greatest": 80, "orderedBy": "Dr Invented", "orderedOn": "2026-01-02" } ],
          "armsNotToBeUsed": { "left": "shunt" },
          "usualValues": [ { "value": "temperature", "median": 36.6, "site": "ear" }, { "value": "oxygen saturation", "median": 94 } ],
          "usualOxygen": { "litresPerMinute": 2 },
          "isolation": "contact",
          "postureTest": { "orderedBy": "Dr Invented", "orderedOn": "2026-02-20" } } ] }
        """;

    [Fact]
    public void Every_field_of_a_resident_is_taken_and_converted_from_the_home_s_units()
    {
        using TemporaryHome folder = new TemporaryHome()
            .With("home.json", """{ "timeZone": "America/Chicago", "units": { "temperature": "celsius", "weight": "kilograms" } }""")
            .With("roster.json", WholeResident);

        Resident resident = Home.Open(folder.Folder, TimeZoneInfo.Utc).Home!.Roster.Residents.ShouldHaveSingleItem();

        resident.Name.ShouldBe("Ada Quill");
        resident.Unit.ShouldBe("East");
        resident.Born.ShouldBe(new DateOnly(1931, 3, 9));
        resident.BandNumber.ShouldBe("0471");
        resident.ArmsNotToBeUsed.ShouldBe([new(Arm.Left, "shunt")]);
        resident.UsualOxygen.ShouldBe(new OxygenSupply(2));
        resident.Isolation.ShouldBe("contact");
        resident.PostureTest.ShouldBe(new OrderedTest("Dr Invented", new DateOnly(2026, 2, 20)));
        resident.OrderedLimits[0].ShouldBe(
            new OrderedLimit(LimitedValue.Systolic, 100, 160, "Dr Invented", new DateOnly(2026, 1, 2))
            {
                Until = new DateTimeOffset(2026, 3, 5, 7, 0, 0, TimeSpan.FromHours(-6)),
            });
        resident.OrderedLimits[1].Greatest!.Value.ShouldBe(176.3698m, 0.0001m); // 80 kg at 0.45359237 kg a pound
        resident.UsualValues.ShouldBe(
        [
            new UsualValue(LimitedValue.TemperatureFahrenheit, 97.9m) { Site = TemperatureSite.Ear }, // 36.6 C is 97.88 F
            new UsualValue(LimitedValue.OxygenSaturation, 94),
        ]);
    }

    [Theory]
    [InlineData("\"id\": \"r1\", ", "", "\"residents[1].id\" is missing; wanted: the home's own number")]
    [InlineData("\"room\": 12", "\"room\": 1200", "\"residents[1].room\" is 1200, must be 1 to 999")]
    [InlineData("\"room\": 12", "\"room\": 1.5", "must be a whole number")]
    [InlineData("\"bed\": \"a\"", "\"bed\": \"A\"", "\"residents[1].bed\" is \"A\", must be one of: a, b, c, d")]
    [InlineData("1931-03-09", "9.3.1931", "\"residents[1].born\" is \"9.3.1931\"; wanted: year, month and day")]
    [InlineData("\"0471\"", "471", "\"residents[1].bandNumber\" is 471, must be a text")]
    [InlineData("\"name\": \"Ada Quill\"", "\"name\": \" \"", "\"residents[1].name\" is empty; wanted: the name as it is spoken")]
    [InlineData("\"name\": \"Ada Quill\"", "\"name\": \"Ada Quill\", \"name\": \"Eve\"", "\"residents[1].name\" is there twice; keep one")]
    [InlineData("\"left\": \"shunt\"", "\"both\": \"shunt\"", "\"residents[1].armsNotToBeUsed.both\" is not known here; known are: left, right")]
    [InlineData("\"median\": 94", "\"median\": null", "\"residents[1].usualValues[2].median\" is null, must be a number")]
    [InlineData("\"systolic\"", "\"blood pressure\"", "must be one of: temperature, pulse, respirations, systolic,")]
    [InlineData("2026-03-05T07:00", "2026-03-05T27:00", "no such time")]
    [InlineData("\"greatest\": 80", "\"greatest\": 1200", "\"greatest\" is 1200, must be 0 to 999.9 in tenths for weight")]
    [InlineData("\"contact\"", "true", "\"residents[1].isolation\" is true, must be a text")]
    [InlineData(", \"orderedOn\": \"2026-02-20\"", "", "\"residents[1].postureTest.orderedOn\" is missing; wanted: year, month and day")]
    [InlineData("2026-02-20", "2026-02-30", "\"orderedOn\" is \"2026-02-30\", and there is no such day")]
    [InlineData("\"residents\": [ {", "\"residents\": [ {{", "not JSON")]
    public void A_mistake_in_the_roster_is_named_with_its_place(string right, string wrong, string says)
    {
        WholeResident.ShouldContain(right);
        using TemporaryHome folder = new TemporaryHome()
            .With("home.json", """{ "units": { "temperature": "celsius", "weight": "kilograms" } }""")
            .With("roster.json", WholeResident.Replace(right, wrong, StringComparison.Ordinal));

        Home.Open(folder.Folder, TimeZoneInfo.Utc).Errors.ShouldHaveSingleItem().Reason.ShouldContain(says);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("\"residents\"")]
    [InlineData("{ \"residents\": [] } {}")]
    [InlineData("{ \"residents\": [] ")]
    [InlineData("{ \"residents\": [ { \"id\": \"\\ud800\" } ] }")]
    [InlineData("{ \"residents\": [ { \"room\": 1e400 } ] }")]
    public void A_file_that_is_no_roster_at_all_is_an_error_and_no_exception(string text)
    {
        using TemporaryHome folder = new TemporaryHome().With("roster.json", text);

        Home.Open(folder.Folder, TimeZoneInfo.Utc).Errors.ShouldHaveSingleItem().File.ShouldEndWith("roster.json");
    }

    [Fact]
    public void A_byte_order_mark_is_no_error()
    {
        using TemporaryHome folder = new TemporaryHome().With("roster.json", "\uFEFF{ \"residents\": [] }");

        Home.Open(folder.Folder, TimeZoneInfo.Utc).Errors.ShouldBeEmpty();
    }
}
