using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Outgoing;

namespace HandsFree.App.Exports;

/// <summary>A home's record as transactions of FHIR R4.</summary>
/// <param name="home">The home.</param>
/// <param name="entries">Reads the record from its beginning.</param>
/// <param name="newPatients">Bundles bring the Patients along.</param>
internal sealed class FhirExport(Home home, Func<IEnumerable<(long Number, JournalEvent Event)>> entries, bool newPatients)
{
    /// <summary>The transactions, in the order in which they are to be sent.</summary>
    /// <param name="since">The number of the last entry that the receiver has; 0 for none.</param>
    /// <param name="residents">Only of these, or null for all.</param>
    public IEnumerable<OutgoingBundle> Bundles(long since, IReadOnlySet<string>? residents)
    {
        // The first entry of a journal never changes, and no two homes have the same.
        FhirIds ids = new(entries().Select(e => $"{e.Event.Id} {e.Event.At:O}").FirstOrDefault() ?? "");
        IdentifierSystems own = IdentifierSystems.Own(ids);
        ExchangeSystems? named = home.Settings.Exchange;
        References references = new(ids, new(named?.Residents ?? own.Residents, named?.People ?? own.People, named?.Places ?? own.Places), newPatients);
        HomeOfTheDay day = new(home.Roster, home.Rules, kept => RosterContent.Read(kept, home.Settings));
        return new OutgoingRecord(entries, ids, references, home.Settings.TimeZone).Bundles(day, since, residents);
    }
}
