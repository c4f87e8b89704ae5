using System.Globalization;
using System.Text.RegularExpressions;
using HandsFree.Core.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Csv;

namespace HandsFree.Exchange.Rosters;

/// <summary>The cells of a roster table as what they say; what can't be read becomes an error with line and column.</summary>
internal sealed partial class RosterCells(string file, RosterUnits units, TimeZoneInfo zone, ICollection<FileError> errors)
{
    private const string ADay = "a day as 2026-01-31";

    public void Fault(CsvCell cell, string part, string wanted) =>
        errors.Add(new(file, cell.Line, $"\"{cell.Name}\" has \"{part}\"; write {wanted}") { Column = cell.Column });

    public int Whole(CsvCell? cell, int least, int greatest) =>
        Number(cell, least, greatest) is not { } number ? 0
        : decimal.Truncate(number) == number ? (int)number
        : Wrong(cell!, cell!.Text, "a whole number", 0);

    public decimal? Number(CsvCell? cell, decimal least, decimal greatest)
    {
        if (cell is null)
        {
            return null;
        }

        if (decimal.TryParse(cell.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) && number >= least && number <= greatest)
        {
            return number;
        }

        Fault(cell, cell.Text, $"a number from {least} to {greatest}");
        return null;
    }

    public string? Bed(CsvCell? cell) => cell?.Text.ToLowerInvariant() switch
    {
        null => null,
        "a" or "b" or "c" or "d" => cell.Text.ToLowerInvariant(),
        _ => Wrong<string?>(cell, cell.Text, "a, b, c or d, or leave it empty in a room of one bed", null),
    };

    public string? BandNumber(CsvCell? cell) =>
        cell is null || BandNumbers().IsMatch(cell.Text) ? cell?.Text : Wrong<string?>(cell, cell.Text, "3 to 12 digits", null);

    public DateOnly Day(CsvCell? cell) => cell is null ? default : Day(cell, cell.Text) ?? default;

    /// <summary>The parts of a cell that are parted by semicolons; those that can't be read are left out, with an error.</summary>
    public List<T> Each<T>(CsvCell? cell, Func<CsvCell, string, T?> read)
        where T : class =>
        cell is null ? [] : [.. cell.Text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(part => read(cell, part)).OfType<T>()];

    public OrderedLimit? Limit(CsvCell cell, string part)
    {
        Match match = Limits().Match(part);
        if (!match.Success || Value(match) is not { } value || (!match.Groups["least"].Success && !match.Groups["greatest"].Success))
        {
            return Wrong<OrderedLimit?>(cell, part, $"such as \"pulse 50-120 by Dr Example on 2026-02-01\" (one end may be left out: \"pulse -120\"; \"until 2026-03-01 07:00\" may follow), of: {string.Join(", ", RosterWords.Values.Keys)}", null);
        }

        decimal? least = Kept(cell, value, match.Groups["least"]);
        decimal? greatest = Kept(cell, value, match.Groups["greatest"]);
        if (least > greatest)
        {
            Fault(cell, part, "the smaller number first");
        }

        return Day(cell, match.Groups["on"].Value) is not { } on ? null : new OrderedLimit(value, least, greatest, match.Groups["who"].Value, on)
        {
            Until = match.Groups["until"] is { Success: true } until ? Moment(cell, until.Value) : null,
        };
    }

    public UsualValue? Usual(CsvCell cell, string part)
    {
        Match match = Usuals().Match(part);
        string site = match.Groups["site"].Value.ToLowerInvariant();
        if (!match.Success || Value(match) is not { } value || (site.Length > 0 && !RosterWords.Sites.ContainsKey(site)))
        {
            return Wrong<UsualValue?>(cell, part, $"such as \"pulse 72\" or \"temperature 97.8 mouth\", of: {string.Join(", ", RosterWords.Values.Keys)}; sites: {string.Join(", ", RosterWords.Sites.Keys)}", null);
        }

        if (site.Length > 0 && value != LimitedValue.TemperatureFahrenheit)
        {
            Fault(cell, part, "a site for a temperature alone");
        }

        return Kept(cell, value, match.Groups["number"]) is not { } median ? null : new UsualValue(value, decimal.Round(median, 1, MidpointRounding.AwayFromZero))
        {
            Site = site.Length > 0 ? RosterWords.Sites.GetValueOrDefault(site) : null,
        };
    }

    public Dictionary<Arm, string> Arms(CsvCell? cell)
    {
        Dictionary<Arm, string> arms = [];
        foreach (string part in Each(cell, (_, text) => text))
        {
            string[] words = part.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (words is [var side, var reason] && Enum.TryParse(side, ignoreCase: true, out Arm arm) && Enum.IsDefined(arm))
            {
                arms[arm] = reason;
            }
            else
            {
                Fault(cell!, part, "the arm and why, such as \"left fistula\", \"right mastectomy\", \"left paresis\"");
            }
        }

        return arms;
    }

    public string? Condition(CsvCell cell, string part) =>
        Resident.KnownConditions.FirstOrDefault(c => string.Equals(c, part, StringComparison.OrdinalIgnoreCase))
        ?? Wrong<string?>(cell, part, $"one of: {string.Join(", ", Resident.KnownConditions)}", null);

    public ScheduledSign? Scheduled(CsvCell cell, string part)
    {
        Match match = Schedules().Match(part);
        string day = match.Groups["day"].Value.ToLowerInvariant();
        if (!match.Success
            || !RosterWords.Signs.TryGetValue(match.Groups["sign"].Value.ToLowerInvariant(), out var sign)
            || !RosterWords.Frequencies.TryGetValue(match.Groups["every"].Value.ToLowerInvariant(), out Frequency every)
            || !DayFits(day, every))
        {
            return Wrong<ScheduledSign?>(cell, part, $"such as \"temperature every shift\", \"pulse daily\", \"blood pressure weekly monday\", \"weight monthly 1 by Dr Example\" (day 1 to 28), of: {string.Join(", ", RosterWords.Signs.Keys)}", null);
        }

        return new ScheduledSign(sign, every, match.Groups["who"] is { Success: true } who ? who.Value : null)
        {
            Weekday = RosterWords.Weekdays.TryGetValue(day, out DayOfWeek weekday) ? weekday : null,
            DayOfMonth = every == Frequency.Monthly && day.Length > 0 ? int.Parse(day, CultureInfo.InvariantCulture) : null,
        };
    }

    public OrderedTest? Test(CsvCell cell)
    {
        Match match = Orders().Match(cell.Text);
        return !match.Success ? Wrong<OrderedTest?>(cell, cell.Text, "who ordered it and when, such as \"by Dr Example on 2026-02-01\"", null)
            : Day(cell, match.Groups["on"].Value) is { } on ? new OrderedTest(match.Groups["who"].Value, on)
            : null;
    }

    public PeriodSaid? Period(CsvCell cell, string part)
    {
        Match match = Periods().Match(part);
        if (!match.Success)
        {
            return Wrong<PeriodSaid?>(cell, part, "why and from when, such as \"hospital 2026-03-01\" or \"antibiotic 2026-03-01 to 2026-03-08\"", null);
        }

        DateOnly? from = Day(cell, match.Groups["from"].Value);
        DateOnly? until = match.Groups["until"] is { Success: true } last ? Day(cell, last.Value) : null;
        if (until < from)
        {
            Fault(cell, part, "the earlier day first");
        }

        return from is { } first ? new(match.Groups["why"].Value, first, until) : null;
    }

    private static LimitedValue? Value(Match match) =>
        RosterWords.Values.TryGetValue(match.Groups["value"].Value.ToLowerInvariant(), out LimitedValue value) ? value : null;

    private static bool DayFits(string day, Frequency every) => every switch
    {
        Frequency.Weekly => day.Length == 0 || RosterWords.Weekdays.ContainsKey(day),
        Frequency.Monthly => day.Length == 0 || (int.TryParse(day, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number is >= 1 and <= 28),
        _ => day.Length == 0,
    };

    private decimal? Kept(CsvCell cell, LimitedValue value, Group number)
    {
        if (!number.Success)
        {
            return null;
        }

        (decimal? kept, string? wrong) = units.Kept(value, decimal.Parse(number.Value, CultureInfo.InvariantCulture));
        if (wrong is not null)
        {
            errors.Add(new(file, cell.Line, $"\"{cell.Name}\" has {number.Value}, {wrong}") { Column = cell.Column });
        }

        return kept;
    }

    private DateOnly? Day(CsvCell cell, string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : Wrong<DateOnly?>(cell, text, ADay, null);

    private DateTimeOffset? Moment(CsvCell cell, string text) =>
        DateTime.TryParseExact(text, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local)
            ? new DateTimeOffset(local, zone.GetUtcOffset(local))
            : Wrong<DateTimeOffset?>(cell, text, "day and time as 2026-01-31 07:00", null);

    private T Wrong<T>(CsvCell cell, string part, string wanted, T otherwise)
    {
        Fault(cell, part, wanted);
        return otherwise;
    }

    [GeneratedRegex("^[0-9]{3,12}$")]
    private static partial Regex BandNumbers();

    [GeneratedRegex(@"^(?<value>[a-z ]+?) (?<least>[0-9]+(\.[0-9]+)?)? ?- ?(?<greatest>[0-9]+(\.[0-9]+)?)? by (?<who>.+?) on (?<on>[0-9-]+)( until (?<until>.+))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Limits();

    [GeneratedRegex(@"^(?<value>[a-z ]+?) (?<number>[0-9]+(\.[0-9]+)?)( (?<site>[a-z]+))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Usuals();

    [GeneratedRegex("^(?<sign>[a-z ]+?) (?<every>every shift|daily|weekly|monthly)( (?<day>(?!by )[a-z0-9]+))?( by (?<who>.+))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Schedules();

    [GeneratedRegex("^by (?<who>.+?) on (?<on>[0-9-]+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Orders();

    [GeneratedRegex("^(?<why>.+?) (?<from>[0-9]{4}-[0-9-]+)( to (?<until>[0-9-]+))?$")]
    private static partial Regex Periods();
}
