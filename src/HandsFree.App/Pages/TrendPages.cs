using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Pages.Trends;

namespace HandsFree.App.Pages;

/// <summary>Writes the trend page of a resident.</summary>
internal static class TrendPages
{
    /// <summary>Writes it. A resident who is no longer on the roster has one as long as the record holds a reading of those days.</summary>
    /// <param name="host">Says what was done or what is wrong.</param>
    /// <param name="home">The home.</param>
    /// <param name="unlocker">Gives person and PIN.</param>
    /// <param name="target">Where the page goes.</param>
    /// <param name="id">The resident's id, as it was typed.</param>
    /// <param name="days">How far back it goes.</param>
    public static int Write(CommandHost host, Home home, Unlocker unlocker, PageTarget target, string id, int days)
    {
        PageDesk desk = new(host, home, target);
        DateTimeOffset from = desk.Now.AddDays(-days);
        (PageRecord? record, string? error) =
            JournalContent.Look(home.Folder, unlocker, $"trend of resident {id}", journal => PageRecord.Since(journal, from), PageRecord.None);
        if (record is null)
        {
            return host.Refuse(error!);
        }

        bool hasReadings = record.Events.OfType<ReadingRecorded>().Any(r => r.Resident == id);
        Resident? resident = home.Roster.ById(id) ?? (hasReadings ? new Resident { Id = id, Name = $"resident {id}", Room = 0, Born = DateOnly.MinValue } : null);
        if (resident is null)
        {
            return host.Refuse($"there is no resident with the id \"{id}\", and the record of the last {days} days has no reading of one; handsfree residents list names them all");
        }

        TrendSheet sheet = TrendSheet.Of(desk.Facts(record, from, null), record.Events, resident, home.Rules);
        int readings = sheet.Rows.Sum(r => r.Cells.Values.Sum(c => c.Count));
        return desk.Write(
            $"{days} days of resident {id}, {readings} readings", () => TrendHtml.Write(sheet, desk.Paper), () => TrendPdf.Write(sheet, desk.Paper));
    }
}
