using System.Globalization;
using HandsFree.App.Homes.JsonFile;
using HandsFree.Core.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>Reads roster.json.</summary>
internal sealed class RosterReader
{
    private readonly string path;
    private readonly HomeSettings settings;
    private readonly ICollection<FileError> errors;
    private readonly ValueReader values;

    private RosterReader(string path, HomeSettings settings, ICollection<FileError> errors)
    {
        this.path = path;
        this.settings = settings;
        this.errors = errors;
        values = new ValueReader(path, settings, errors);
    }

    /// <summary>The residents; none where the file is not there, and where it is broken, with the errors.</summary>
    /// <param name="path">roster.json.</param>
    /// <param name="settings">The home's units and time zone.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static Roster Read(string path, HomeSettings settings, ICollection<FileError> errors) =>
        CheckedFile.Read(path, "roster", errors) is { } file
            ? new RosterReader(path, settings, errors).Read(file.ItemsOf("residents"))
            : new Roster([]);

    private Roster Read(IReadOnlyList<LocatedNode> items)
    {
        Unique(items, "id", item => item.TextOf("id"));
        Unique(items, "bandNumber", item => item.TextOf("bandNumber"));
        Unique(items, "room and bed", item => $"room {item.NumberOf("room")}{(item.TextOf("bed") is { } bed ? " bed " + bed : "")}");
        foreach (IGrouping<decimal?, LocatedNode> room in items.GroupBy(item => item.NumberOf("room")).Where(room => room.Count() > 1))
        {
            foreach (LocatedNode item in room.Where(item => item["bed"] is null))
            {
                Fault(item.Line, $"room {room.Key} has {room.Count()} residents, so \"bed\" must be there: a, b, c or d");
            }
        }

        return new Roster([.. items.Select(Resident)]);
    }

    private Resident Resident(LocatedNode item) => new()
    {
        Id = item.TextOf("id")!,
        Name = item.TextOf("name")!,
        Room = (int)item.NumberOf("room")!.Value,
        Bed = item.TextOf("bed"),
        Born = Day(item["born"]!, "born"),
        BandNumber = item.TextOf("bandNumber"),
        OrderedLimits = [.. item.ItemsOf("orderedLimits").Select(Limit)],
        ArmsNotToBeUsed = Arms(item["armsNotToBeUsed"]),
        UsualValues = [.. item.ItemsOf("usualValues").Select(Usual)],
        UsualOxygen = item["usualOxygen"] is { } oxygen ? new OxygenSupply(oxygen.NumberOf("litresPerMinute")) : null,
    };

    private OrderedLimit Limit(LocatedNode item)
    {
        decimal? least = values.Exact(item, "least");
        decimal? greatest = values.Exact(item, "greatest");
        if (item["least"] is null && item["greatest"] is null)
        {
            Fault(item.Line, "an ordered limit needs \"least\", \"greatest\" or both");
        }
        else if (least > greatest)
        {
            Fault(item.Line, "\"least\" is above \"greatest\"; exchange them or leave one out");
        }

        return new OrderedLimit(
            HomeWords.Values[item.TextOf("value")!], least, greatest, item.TextOf("orderedBy")!, Day(item["orderedOn"]!, "orderedOn"))
        {
            Until = item["until"] is { } until ? Moment(until) : null,
        };
    }

    private UsualValue Usual(LocatedNode item)
    {
        LimitedValue value = HomeWords.Values[item.TextOf("value")!];
        if (item["site"] is { } site && value != LimitedValue.TemperatureFahrenheit)
        {
            Fault(site.Line, "\"site\" belongs to a temperature alone; leave it out");
        }

        return new UsualValue(value, Math.Round(values.Exact(item, "median") ?? 0, 1, MidpointRounding.AwayFromZero))
        {
            Site = item.TextOf("site") is { } word ? HomeWords.Sites[word] : null,
        };
    }

    private static Dictionary<Arm, string> Arms(LocatedNode? item)
    {
        Dictionary<Arm, string> arms = [];
        foreach ((string name, Arm arm) in ((string, Arm)[])[("left", Arm.Left), ("right", Arm.Right)])
        {
            if (item?.TextOf(name) is { } reason)
            {
                arms[arm] = reason;
            }
        }

        return arms;
    }

    private DateOnly Day(LocatedNode value, string name)
    {
        if (!DateOnly.TryParseExact(value.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            Fault(value.Line, $"\"{name}\" is {value.InWords}, and there is no such day");
        }

        return day;
    }

    private DateTimeOffset Moment(LocatedNode value)
    {
        if (!DateTime.TryParseExact(value.Text, "yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local))
        {
            Fault(value.Line, $"\"until\" is {value.InWords}, and there is no such time");
        }

        return new DateTimeOffset(local, settings.TimeZone.GetUtcOffset(local));
    }

    private void Unique(IReadOnlyList<LocatedNode> items, string what, Func<LocatedNode, string?> key)
    {
        Dictionary<string, int> lines = new(StringComparer.Ordinal);
        foreach (LocatedNode item in items)
        {
            if (key(item) is { } text && !lines.TryAdd(text, item.Line))
            {
                Fault(item.Line, $"\"{text}\" is the {what} of two residents, here and at line {lines[text]}; each must have their own");
            }
        }
    }

    private void Fault(int line, string reason) => errors.Add(new(path, line, reason));
}
