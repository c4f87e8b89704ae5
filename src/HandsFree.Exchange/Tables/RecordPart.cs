using System.Globalization;
using HandsFree.Core.Journal;

namespace HandsFree.Exchange.Tables;

/// <summary>The part of a record that is taken out: which residents, and from when on.</summary>
/// <param name="Entries">All entries of the record with their numbers, oldest first; also those outside of the part, which may amend it.</param>
/// <param name="Zone">The home's time zone, in which moments are written.</param>
/// <param name="Residents">The ids; null for all.</param>
/// <param name="From">Measured, opened or entered at that moment or later; null for all.</param>
public sealed record RecordPart(
    IReadOnlyList<(long Number, JournalEvent Event)> Entries, TimeZoneInfo Zone, IReadOnlySet<string>? Residents = null, DateTimeOffset? From = null)
{
    /// <summary>The events.</summary>
    public IEnumerable<JournalEvent> Events => Entries.Select(e => e.Event);

    /// <summary>A moment in the home's time, with seconds and offset.</summary>
    public string Moment(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, Zone).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>Whether something of a resident and a moment belongs to it.</summary>
    public bool Has(string resident, DateTimeOffset at) => Residents?.Contains(resident) != false && (From is not { } from || at >= from);
}
