using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>A record as transactions of FHIR R4. It is read twice from its beginning, and held in memory as far as units are not complete.</summary>
/// <param name="entries">Reads all entries with their numbers, oldest first.</param>
/// <param name="ids">Makes ids.</param>
/// <param name="references">Names residents, people and places.</param>
/// <param name="zone">The home's time zone.</param>
public sealed class OutgoingRecord(
    Func<IEnumerable<(long Number, JournalEvent Event)>> entries, FhirIds ids, References references, TimeZoneInfo zone)
{
    /// <summary>A bundle has at most so many entries; a unit that has more goes alone, for it is never torn.</summary>
    public const int MostEntries = 500;

    /// <summary>The transactions, in the order in which they are to be sent.</summary>
    /// <param name="day">What was in force; at its beginning.</param>
    /// <param name="since">The number of the last entry that the receiver has; 0 for none. What was touched later goes as a whole.</param>
    /// <param name="residents">Only of these, or null for all.</param>
    public IEnumerable<OutgoingBundle> Bundles(HomeOfTheDay day, long since, IReadOnlySet<string>? residents)
    {
        List<OutgoingUnit> units = [];
        HashSet<string> patients = [];
        int size = 0;
        foreach (OutgoingUnit unit in Units(day, since, residents))
        {
            int more = unit.Entries.Count + (references.BringPatients ? unit.Residents.Count(r => !patients.Contains(r)) : 0);
            if (units.Count > 0 && size + more > MostEntries)
            {
                yield return Bundle(units, patients, day);
                units = [];
                patients = [];
                size = 0;
                more = unit.Entries.Count + (references.BringPatients ? unit.Residents.Count : 0);
            }

            units.Add(unit);
            patients.UnionWith(unit.Residents);
            size += more;
        }

        if (units.Count > 0)
        {
            yield return Bundle(units, patients, day);
        }
    }

    private IEnumerable<OutgoingUnit> Units(HomeOfTheDay day, long since, IReadOnlySet<string>? residents)
    {
        RecordIndex index = new(entries());
        UnitWriter writer = new(new ObservationFrame(ids, references, zone));
        Dictionary<int, List<OutgoingEvent>> open = [];
        foreach ((long number, JournalEvent happened) in entries())
        {
            day.Take(happened);
            if (index.Of(happened) is not { } unit || unit.Last <= since)
            {
                continue;
            }

            if (!open.TryGetValue(unit.Unit, out List<OutgoingEvent>? of))
            {
                open[unit.Unit] = of = [];
            }

            of.Add(new OutgoingEvent(
                number,
                happened,
                happened is ReadingRecorded reading ? day.Limits(reading) : new Dictionary<LimitedValue, Core.Rules.Limits.ReportLimits>(),
                happened.ResidentId() is { } id && day.Resident(id) is { Room: > 0 } resident ? RosterFaults.Place(resident) : null));
            if (number == unit.Last)
            {
                open.Remove(unit.Unit);
                OutgoingUnit made = writer.Of(of);
                if (made.Entries.Count > 0 && (residents is null || made.Residents.Any(residents.Contains)))
                {
                    yield return made;
                }
            }
        }
    }

    private OutgoingBundle Bundle(IReadOnlyList<OutgoingUnit> units, IEnumerable<string> patients, HomeOfTheDay day) => new(
        new Bundle
        {
            Type = Hl7.Fhir.Model.Bundle.BundleType.Transaction,
            Entry =
            [
                .. references.BringPatients ? patients.Order(StringComparer.Ordinal).Select(id => references.PatientEntry(id, day.Resident(id))) : [],
                .. units.SelectMany(u => u.Entries),
            ],
        },
        units[^1].Through,
        units.SelectMany(u => u.Earlier).ToDictionary(e => e.Key, e => e.Value));
}
