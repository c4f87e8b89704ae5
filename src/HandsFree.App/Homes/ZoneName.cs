using TimeZoneConverter;

namespace HandsFree.App.Homes;

/// <summary>Finds the time zone that a home names. A home's folder may go from Windows to Linux and back, and each system knows its
/// own names only: Windows "Central Standard Time", the others "America/Chicago". What the system does not know is tried by its other
/// name (Unicode CLDR, windowsZones.xml, as the library TimeZoneConverter carries it).</summary>
internal static class ZoneName
{
    /// <summary>The time zone of a name.</summary>
    /// <param name="name">An IANA name, or one of Windows.</param>
    /// <returns>Null where no system has such a name, or this machine lacks the zone's data.</returns>
    public static TimeZoneInfo? Find(string name) =>
        Find(name, static id => TimeZoneInfo.TryFindSystemTimeZoneById(id, out TimeZoneInfo? zone) ? zone : null);

    /// <summary>The name that a home's file gets: the IANA name, which is the same on every system.</summary>
    public static string Iana(TimeZoneInfo zone) => TZConvert.TryWindowsToIana(zone.Id, out string? iana) ? iana : zone.Id;

    /// <summary>The time zone of a name on some system.</summary>
    /// <param name="name">An IANA name, or one of Windows.</param>
    /// <param name="ofSystem">The system's own zone of a name, or null.</param>
    public static TimeZoneInfo? Find(string name, Func<string, TimeZoneInfo?> ofSystem) =>
        ofSystem(name)
        ?? (TZConvert.TryIanaToWindows(name, out string? windows) ? ofSystem(windows) : null)
        ?? (TZConvert.TryWindowsToIana(name, out string? iana) ? ofSystem(iana) : null);
}
