using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.App.Homes;
using HandsFree.Core.Residents;

namespace HandsFree.App.ResidentDesk;

/// <summary>The difference of two rosters, resident by resident, in the words of roster.json.</summary>
/// <param name="writer">Writes in the home's units.</param>
internal sealed class RosterChanges(RosterWriter writer)
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>New and changed ones in the order of the new roster, then those who are gone.</summary>
    public IReadOnlyList<RosterChange> Of(Roster before, Roster after) =>
    [
        .. after.Residents.Select(r => before.ById(r.Id) is { } old ? Changed(old, r) : new RosterChange(RosterChangeKind.New, $"+ {Who(r)}")).OfType<RosterChange>(),
        .. before.Residents.Where(r => after.ById(r.Id) is null).Select(r => new RosterChange(RosterChangeKind.Gone, $"- {Who(r)}")),
    ];

    /// <summary>Id, name and place.</summary>
    public static string Who(Resident resident) => $"{resident.Id} {resident.Name}, {RosterFaults.Place(resident)}";

    private RosterChange? Changed(Resident before, Resident after)
    {
        JsonObject old = writer.Resident(before);
        JsonObject now = writer.Resident(after);
        string[] fields = [.. old.Select(f => f.Key).Union(now.Select(f => f.Key)).Where(f => Text(old[f]) != Text(now[f])).Select(f => $"{f}: {Text(old[f])} -> {Text(now[f])}")];
        return fields.Length == 0 ? null : new(RosterChangeKind.Changed, $"~ {Who(after)}: {string.Join("; ", fields)}");
    }

    private static string Text(JsonNode? value) => value?.ToJsonString(Options) ?? "nothing";
}
