using System.Globalization;
using System.Text.RegularExpressions;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.App.Reports;

/// <summary>Finds a report by its id, or by the room whose only open one it is.</summary>
/// <param name="journal">The journal.</param>
/// <param name="home">The residents.</param>
internal sealed partial class ReportFinder(HomeJournal journal, Home home)
{
    /// <summary>The events that the found report stands among, oldest first: those of the present, or all where it is an old one.</summary>
    public IReadOnlyList<JournalEvent> Events { get; private set; } = journal.Present();

    /// <summary>The reports of the present.</summary>
    public ReportBook Book => ReportBook.Of(Events);

    /// <summary>The report, or one line that says why there is none.</summary>
    public (Report? Report, string? Wrong) Find(string named)
    {
        ReportBook present = Book;
        if (present.ById(named) is { } report)
        {
            return (report, null);
        }

        if (Place().Match(named.Trim().ToLowerInvariant()) is { Success: true } place)
        {
            return OfPlace(present, int.Parse(place.Groups["room"].Value, CultureInfo.InvariantCulture), place.Groups["bed"].Value);
        }

        Events = journal.All();
        return Book.ById(named) is { } old
            ? (old, null)
            : (null, $"there is no report \"{named}\"; \"handsfree report list\" names them, or say the room: \"12\", \"12b\"");
    }

    private (Report? Report, string? Wrong) OfPlace(ReportBook present, int room, string bed)
    {
        IReadOnlyList<Resident> there = home.Roster.At(room, bed.Length > 0 ? bed : null);
        string where = bed.Length > 0 ? $"room {room} bed {bed.ToUpperInvariant()}" : $"room {room}";
        Report[] reports = [.. present.All.Where(r => r.State != ReportState.Closed && there.Any(t => t.Id == r.Resident))];
        Report[] open = [.. reports.Where(r => r.IsOpen)];
        return (there, open.Length > 0 ? open : reports) switch
        {
            ({ Count: 0 }, _) => (null, home.Roster.At(room, null).Count > 0 ? $"room {room} has no bed {bed.ToUpperInvariant()}" : $"room {room} is not in this home"),
            (_, []) => (null, $"no report of {where} is open"),
            (_, [var only]) => (only, null),
            (_, var several) => (null, $"{where} has {several.Length} reports; name one: {string.Join(", ", several.Select(r => r.Id))}"),
        };
    }

    [GeneratedRegex("^(room )?(?<room>[1-9][0-9]{0,2})( bed | )?(?<bed>[a-d])?$", RegexOptions.CultureInvariant)]
    private static partial Regex Place();
}
