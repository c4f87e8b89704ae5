using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.App.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>Writes roster.json: what <see cref="RosterReader"/> reads comes back as it was, in the home's units.</summary>
/// <param name="settings">The home's units and time zone.</param>
internal sealed class RosterWriter(HomeSettings settings)
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Replaces the file as a whole.</summary>
    /// <returns>Null, or one line that says what is wrong and what to do; then the old file is as it was.</returns>
    /// <exception cref="IOException">The home's folder can't be made.</exception>
    /// <exception cref="UnauthorizedAccessException">The home's folder may not be made.</exception>
    public string? Write(string path, Roster roster)
    {
        HomeFolder.Make(Path.GetDirectoryName(path)!);
        return AtomicFile.Write(path, [.. JsonSerializer.SerializeToUtf8Bytes(Json(roster), Options), (byte)'\n']);
    }

    /// <summary>The content of roster.json.</summary>
    public JsonObject Json(Roster roster) => new() { ["residents"] = new JsonArray([.. roster.Residents.Select(Resident)]) };

    /// <summary>One resident, only the fields that say something.</summary>
    public JsonObject Resident(Resident resident) => Filled(
        ("id", resident.Id),
        ("name", resident.Name),
        ("officialName", resident.OfficialName),
        ("room", resident.Room),
        ("bed", resident.Bed),
        ("unit", resident.Unit),
        ("born", Day(resident.Born)),
        ("bandNumber", resident.BandNumber),
        ("orderedLimits", List(resident.OrderedLimits.Select(Limit))),
        ("armsNotToBeUsed", resident.ArmsNotToBeUsed.Count == 0 ? null : Filled([.. resident.ArmsNotToBeUsed.OrderBy(a => a.Key).Select(a => (a.Key == Arm.Left ? "left" : "right", (JsonNode?)a.Value))])),
        ("usualValues", List(resident.UsualValues.Select(Usual))),
        ("usualOxygen", resident.UsualOxygen is { } oxygen ? Filled(("litresPerMinute", oxygen.LitresPerMinute)) : null),
        ("armCentimetres", resident.ArmCentimetres),
        ("devices", List(resident.Devices.Select(d => (JsonNode?)d))),
        ("isolation", resident.Isolation),
        ("postureTest", resident.PostureTest is { } test ? Filled(("orderedBy", test.OrderedBy), ("orderedOn", Day(test.OrderedOn))) : null),
        ("conditions", List(resident.Conditions.Select(c => (JsonNode?)c))),
        ("schedule", List(resident.Schedule.Select(Scheduled))),
        ("usualFrozen", List(resident.UsualFrozen.Select(f => Period(f.Why, f.From, f.Until)))),
        ("away", resident.Away is { } away ? Period(away.Why, away.From, away.Until) : null),
        ("moved", resident.Moved is { } move ? Filled(("fromRoom", move.FromRoom), ("fromBed", move.FromBed), ("on", Day(move.On))) : null));

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static JsonArray? List(IEnumerable<JsonNode?> items) => items.ToArray() is { Length: > 0 } some ? new JsonArray(some) : null;

    private static JsonObject Period(string why, DateOnly from, DateOnly? until) =>
        Filled(("why", why), ("from", Day(from)), ("until", until is { } last ? Day(last) : null));

    private static JsonNode? Scheduled(ScheduledSign scheduled) => Filled(
        ("sign", RosterWords.Of(RosterWords.Signs, scheduled.Sign)),
        ("every", RosterWords.Of(RosterWords.Frequencies, scheduled.Every)),
        ("weekday", scheduled.Weekday is { } weekday ? RosterWords.Of(RosterWords.Weekdays, weekday) : null),
        ("dayOfMonth", scheduled.DayOfMonth),
        ("orderedBy", scheduled.OrderedBy));

    private static JsonObject Filled(params (string Name, JsonNode? Value)[] fields) =>
        new(fields.Where(f => f.Value is not null).Select(f => KeyValuePair.Create(f.Name, f.Value)));

    private JsonNode? Limit(OrderedLimit limit) => Filled(
        ("value", RosterWords.Of(RosterWords.Values, limit.Value)),
        ("least", limit.Least is { } least ? settings.RosterUnits.Written(limit.Value, least) : null),
        ("greatest", limit.Greatest is { } greatest ? settings.RosterUnits.Written(limit.Value, greatest) : null),
        ("orderedBy", limit.OrderedBy),
        ("orderedOn", Day(limit.OrderedOn)),
        ("until", limit.Until is { } until ? settings.Here(until).ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture) : null));

    private JsonNode? Usual(UsualValue usual) => Filled(
        ("value", RosterWords.Of(RosterWords.Values, usual.Value)),
        ("median", settings.RosterUnits.Written(usual.Value, usual.Median)),
        ("site", usual.Site is { } site ? RosterWords.Of(RosterWords.Sites, site) : null));
}
