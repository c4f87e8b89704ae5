using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;

namespace HandsFree.App.ShiftChange;

/// <summary>From when on a handover list counts.</summary>
/// <param name="At">The beginning, in the home's time zone.</param>
/// <param name="Remark">Something that the reader must know of it, or null.</param>
internal sealed record ShiftBeginning(DateTimeOffset At, string? Remark)
{
    /// <summary>In the first hour of a shift the list is still that of the shift before: that is when shifts change.</summary>
    private static readonly TimeSpan ChangeOfShift = TimeSpan.FromHours(1);

    /// <summary>The beginning that was typed, else that of the present shift.</summary>
    /// <returns>Null where what was typed is none.</returns>
    public static ShiftBeginning? Of(string? typed, HomeSettings settings, IReadOnlyList<JournalEvent> journal, DateTimeOffset now) =>
        typed is null ? Present(settings, journal, now) : Typed(typed, settings, now);

    /// <summary>What is said to a beginning that is none.</summary>
    public static string Wrong(string typed) => $"--shift-began is \"{typed}\"; write a time such as 07:00 or 2026-01-31T07:00";

    /// <summary>The beginning of the present shift; where nothing was recorded in it, of the last one in which something was, and the
    /// remark says so.</summary>
    public static ShiftBeginning Present(HomeSettings settings, IReadOnlyList<JournalEvent> journal, DateTimeOffset now)
    {
        DateTimeOffset present = Of(settings, now);
        if (journal.Count == 0 || journal[^1].At >= present)
        {
            return new(present, null);
        }

        DateTimeOffset last = settings.Here(journal[^1].At);
        string when = last.ToString("d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture);
        return new(Of(settings, last), $"nothing was recorded in the present shift; this is the shift of the last entry, {when}");
    }

    /// <summary>The beginning that was typed: a time of day (the last one that is over), or day and time.</summary>
    /// <returns>Null where the text is neither.</returns>
    public static ShiftBeginning? Typed(string text, HomeSettings settings, DateTimeOffset now)
    {
        CultureInfo culture = CultureInfo.InvariantCulture;
        DateTime here = settings.Here(now).DateTime;
        if (TimeOnly.TryParseExact(text, ["H:mm", "HH:mm"], culture, DateTimeStyles.None, out TimeOnly time))
        {
            DateTime local = here.Date + time.ToTimeSpan();
            return new(InZone(settings, local > here ? local.AddDays(-1) : local), null);
        }

        return DateTime.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm"], culture, DateTimeStyles.None, out DateTime moment)
            ? new(InZone(settings, moment), null)
            : null;
    }

    private static DateTimeOffset Of(HomeSettings settings, DateTimeOffset moment)
    {
        DateTimeOffset began = settings.ShiftBegan(moment);
        return moment - began < ChangeOfShift ? settings.ShiftBegan(began.AddMinutes(-1)) : began;
    }

    private static DateTimeOffset InZone(HomeSettings settings, DateTime local) => new(local, settings.TimeZone.GetUtcOffset(local));
}
