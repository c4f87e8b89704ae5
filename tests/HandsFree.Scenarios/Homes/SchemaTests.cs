using System.Globalization;
using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.App.Homes.JsonFile;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Homes;

public sealed class SchemaTests
{
    public static TheoryData<string> Names => ["home", "roster"];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_schema_uses_only_keywords_that_are_checked(string name)
    {
        JsonElement[] schemas = [.. Schemas(JsonSchema.Of(name).Root)];

        schemas.Length.ShouldBeGreaterThan(10);
        schemas.SelectMany(schema => schema.EnumerateObject().Select(keyword => keyword.Name)).Distinct().ShouldBeSubsetOf(JsonSchema.Keywords);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_object_of_a_schema_says_that_nothing_else_may_stand_in_it(string name)
    {
        foreach (JsonElement schema in Schemas(JsonSchema.Of(name).Root).Where(IsObject))
        {
            schema.GetProperty("additionalProperties").GetBoolean().ShouldBeFalse(schema.ToString());
            schema.TryGetProperty("properties", out _).ShouldBeTrue(schema.ToString());
        }
    }

    [Fact]
    public void The_defaults_that_the_schema_names_are_those_of_the_program()
    {
        HomeSettings defaults = new() { TimeZone = TimeZoneInfo.Utc };
        JsonElement home = JsonSchema.Of("home").Root;

        Default(home, "units", "temperature").ShouldBe(defaults.TemperatureUnit == TemperatureUnit.Fahrenheit ? "fahrenheit" : "celsius");
        Default(home, "units", "weight").ShouldBe(defaults.WeightUnit == WeightUnit.Pounds ? "pounds" : "kilograms");
        Default(home, "overdueMinutes", "reportNow").ShouldBe(Text(defaults.Overdue.ReportNow.TotalMinutes));
        Default(home, "overdueMinutes", "reportThisShift").ShouldBe(Text(defaults.Overdue.ReportThisShift.TotalMinutes));
        Default(home, "overdueMinutes", "recheck").ShouldBe(Text(defaults.Overdue.Recheck.TotalMinutes));
        Default(home, "wording", "refused").ShouldBe(defaults.Wording.Refused);
        Default(home, "aide").ShouldBe(defaults.Aide);
        Default(home, "pulseCountSeconds").ShouldBe(Text(defaults.PulseCountSeconds));
        Default(home, "wordsReadableHours").ShouldBe(Text(defaults.WordsReadable.TotalHours));
        Default(home, "longestPauseMinutes").ShouldBe(Text(defaults.LongestPause.TotalMinutes));
        Default(home, "answerAwaitedSeconds").ShouldBe(Text(defaults.AnswerAwaited.TotalSeconds));
        Default(home, "leadAfterSeconds").ShouldBe(Text(defaults.LeadAfter.TotalSeconds));
        string shifts = home.GetProperty("properties").GetProperty("shifts").GetProperty("description").GetString()!;
        defaults.Shifts.ShouldAllBe(shift => shifts.Contains(shift.Begins.ToString("HH:mm", CultureInfo.InvariantCulture), StringComparison.Ordinal));
    }

    [Fact]
    public void The_words_of_the_schemas_are_those_that_the_program_knows()
    {
        Words("home", "due").ShouldBe(RosterWords.Signs.Keys);
        JsonElement definitions = JsonSchema.Of("roster").Root.GetProperty("$defs");
        Texts(definitions.GetProperty("value")).ShouldBe(RosterWords.Values.Keys);
        Texts(definitions.GetProperty("usualValue").GetProperty("properties").GetProperty("site")).ShouldBe(RosterWords.Sites.Keys);
        Texts(JsonSchema.Of("home").Root.GetProperty("properties").GetProperty("engine")).ShouldBe(App.Hearing.EngineNames.All);
        JsonElement scheduled = definitions.GetProperty("scheduled").GetProperty("properties");
        Texts(scheduled.GetProperty("sign")).ShouldBe(RosterWords.Signs.Keys);
        Texts(scheduled.GetProperty("every")).ShouldBe(RosterWords.Frequencies.Keys);
        Texts(scheduled.GetProperty("weekday")).ShouldBe(RosterWords.Weekdays.Keys);
        Texts(definitions.GetProperty("resident").GetProperty("properties").GetProperty("conditions").GetProperty("items")).ShouldBe(Resident.KnownConditions);
        RosterWords.Frequencies.Values.ShouldBe(Enum.GetValues<Frequency>(), ignoreOrder: true);
        RosterWords.Signs.Values.Distinct().ShouldBe(Enum.GetValues<VitalSign>(), ignoreOrder: true);
        RosterWords.Values.Values.ShouldBe(Enum.GetValues<Core.Residents.LimitedValue>(), ignoreOrder: true);
        RosterWords.Sites.Values.ShouldBe(Enum.GetValues<Core.Observations.TemperatureSite>(), ignoreOrder: true);
    }

    private static string Default(JsonElement schema, params string[] path) =>
        path.Aggregate(schema, (at, name) => at.GetProperty("properties").GetProperty(name)).GetProperty("default").ToString();

    private static IEnumerable<string> Words(string schema, string list) =>
        Texts(JsonSchema.Of(schema).Root.GetProperty("properties").GetProperty(list).GetProperty("items"));

    private static IEnumerable<string> Texts(JsonElement schema) => schema.GetProperty("enum").EnumerateArray().Select(word => word.GetString()!);

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);

    private static bool IsObject(JsonElement schema) => schema.TryGetProperty("type", out JsonElement type) && type.GetString() == "object";

    /// <summary>The schema and all that it is made of.</summary>
    private static IEnumerable<JsonElement> Schemas(JsonElement schema)
    {
        yield return schema;
        foreach (string keyword in (string[])["properties", "$defs"])
        {
            if (schema.TryGetProperty(keyword, out JsonElement named))
            {
                foreach (JsonElement inner in named.EnumerateObject().SelectMany(each => Schemas(each.Value)))
                {
                    yield return inner;
                }
            }
        }

        if (schema.TryGetProperty("items", out JsonElement items))
        {
            foreach (JsonElement inner in Schemas(items))
            {
                yield return inner;
            }
        }
    }
}
