using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Outgoing;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>What the invented home sends.</summary>
internal static class Outgoing
{
    public static readonly FhirIds Ids = new("invented home");
    public static readonly IdentifierSystems Systems = new("https://home.example/residents", "https://home.example/people", "https://home.example/places");

    public static HomeOfTheDay Day(Roster? roster = null) => new(roster ?? Made.Roster, Made.Rules, _ => null);

    public static OutgoingBundle[] Bundles(IReadOnlyList<JournalEvent> events, bool newPatients = true, long since = 0, Roster? roster = null, IReadOnlySet<string>? residents = null) =>
    [
        .. new OutgoingRecord(() => Made.Numbered(events), Ids, new References(Ids, Systems, newPatients), Made.Chicago).Bundles(Day(roster), since, residents),
    ];

    public static Resource[] Resources(params JournalEvent[] events) => [.. Bundles(events).SelectMany(b => b.Bundle.Entry).Select(e => e.Resource!)];

    public static Observation Observation(params JournalEvent[] events) => Resources(events).OfType<Observation>().Single();
}
