using System.Globalization;

namespace HandsFree.Pages.Texts;

/// <summary>Times as they stand on a page: the time alone within the shift, with the day before it.</summary>
/// <param name="here">A moment in the home's time zone.</param>
/// <param name="since">From when on the time alone is enough.</param>
internal sealed class Clock(Func<DateTimeOffset, DateTimeOffset> here, DateTimeOffset since)
{
    /// <summary>"09:14", or "24 Nov 09:14".</summary>
    public string Of(DateTimeOffset at) =>
        here(at).ToString(at >= since ? "HH:mm" : "d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Where there is little room: "09:14" on the same day, "24 Nov" on another.</summary>
    public string InShort(DateTimeOffset at, DateTimeOffset now) =>
        here(at).ToString(here(at).Date == here(now).Date ? "HH:mm" : "d MMM", CultureInfo.InvariantCulture);

    /// <summary>"Thu 26 Nov 2026, 14:40".</summary>
    public static string Whole(DateTimeOffset at) => at.ToString("ddd d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);
}
