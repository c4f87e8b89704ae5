using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.App.Screens;

/// <summary>What is due and what is reported, as lines without names and values.</summary>
internal static class RoundLists
{
    /// <summary>What is due next of the resident at a place, or empty.</summary>
    public static string Next(Home home, IReadOnlyList<JournalEvent> journal, string place, DateTimeOffset now)
    {
        Resident? here = place.Length == 0 ? null : home.Roster.Residents.FirstOrDefault(r => Place(r) == place);
        IReadOnlyList<VitalSign> open = here is null || !IsIdentified(journal, here) ? [] : Open(home, journal, here, now);
        return open.Count == 0 ? "" : Word(open[0]);
    }

    /// <summary>Who has something due, in the order of the round.</summary>
    public static IReadOnlyList<string> Due(Home home, IReadOnlyList<JournalEvent> journal, DateTimeOffset now) =>
    [
        .. RoundOrder.Of(home.Roster, r => Open(home, journal, r, now), r => IsIdentified(journal, r))
            .Select(r => $"{Place(r),-14} {string.Join(", ", Open(home, journal, r, now).Select(Short))}"),
    ];

    /// <summary>The reports that no nurse has acknowledged, the gravest first.</summary>
    public static IReadOnlyList<string> Reports(Home home, IReadOnlyList<JournalEvent> journal)
    {
        HashSet<string> closed = [.. journal.OfType<ReportAcknowledged>().Select(a => a.Report), .. journal.OfType<EnteredInError>().Select(e => e.Event)];
        return
        [
            .. journal.OfType<ReportOpened>().Where(r => !closed.Contains(r.Id)).OrderByDescending(r => r.Urgency).ThenBy(r => r.At)
                .Select(r => Line(home, r)),
        ];
    }

    private static string Line(Home home, ReportOpened report)
    {
        string place = home.Roster.ById(report.Resident) is { } resident ? Place(resident) : "moved out";
        string urgency = report.Urgency == ReportUrgency.Now ? "NOW" : "this shift";
        string sign = report.Sign is { } what ? Word(what) : "";
        return $"{place,-14} {urgency,-10} {sign,-17} since {home.Settings.Here(report.At).ToString("HH:mm", CultureInfo.InvariantCulture)}".TrimEnd();
    }

    private static IReadOnlyList<VitalSign> Open(Home home, IReadOnlyList<JournalEvent> journal, Resident resident, DateTimeOffset now)
    {
        JournalEvent[] round = [.. ThisRound(journal)];
        HashSet<string> gone = [.. round.OfType<EnteredInError>().Select(e => e.Event)];
        bool Settled(VitalSign sign) => round.Any(e => !gone.Contains(e.Id) && e switch
        {
            ReadingRecorded r => r.Resident == resident.Id && r.Confirmed.Reading.Value.Sign == sign,
            NotTakenRecorded n => n.Resident == resident.Id && (n.Sign is null || n.Sign == sign),
            LeftOpen o => o.Resident == resident.Id && o.Sign == sign,
            _ => false,
        });
        return DueList.Open(DueList.Of(resident, home.Settings.Due, journal, now), Settled);
    }

    private static bool IsIdentified(IReadOnlyList<JournalEvent> journal, Resident resident) =>
        ThisRound(journal).OfType<ResidentIdentified>().Any(i => i.Resident == resident.Id);

    // A round that was not ended goes on.
    private static IEnumerable<JournalEvent> ThisRound(IReadOnlyList<JournalEvent> journal) =>
        journal.Skip(1 + journal.ToList().FindLastIndex(e => e is RoundEnded));

    // Five of them must fit a line of 80 columns.
    private static string Short(VitalSign sign) => sign == VitalSign.OxygenSaturation ? "oxygen" : Word(sign);

    private static string Word(VitalSign sign) => RosterWords.Signs.First(s => s.Value == sign).Key;

    private static string Place(Resident resident) =>
        resident.Bed is { } bed ? $"Room {resident.Room} bed {bed.ToUpperInvariant()}" : $"Room {resident.Room}";
}
