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
        values = new ValueReader(path, settings.RosterUnits, errors);
    }

    /// <summary>The residents; none where the file is not there, and where it is broken, with the errors.</summary>
    /// <param name="path">roster.json.</param>
    /// <param name="settings">The home's units and time zone.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static Roster Read(string path, HomeSettings settings, ICollection<FileError> errors)
    {
        return Read(path, CheckedFile.Read(path, "roster", errors), settings, errors);
    }

    /// <summary>The residents of a file's bytes; none where it is broken, with the errors.</summary>
    /// <param name="name">How errors name it.</param>
    /// <param name="content">As roster.json.</param>
    /// <param name="settings">The home's units and time zone.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static Roster Read(string name, byte[] content, HomeSettings settings, ICollection<FileError> errors) =>
        Read(name, CheckedFile.Of(name, content, "roster", errors), settings, errors);

    private static Roster Read(string path, LocatedNode? file, HomeSettings settings, ICollection<FileError> errors)
    {
        if (file is null)
        {
            return new Roster([]);
        }

        List<FileError> found = [];
        Roster roster = new RosterReader(path, settings, found).Read(file.ItemsOf("residents"));
        foreach (FileError error in found.OrderBy(e => e.Line))
        {
            errors.Add(error);
        }

        return roster;
    }

    private Roster Read(IReadOnlyList<LocatedNode> items)
    {
        Resident[] residents = [.. items.Select(Resident)];
        foreach ((int index, string reason) in RosterFaults.Of(residents, i => $"line {items[i].Line}"))
        {
            Fault(items[index].Line, reason);
        }

        return new Roster(residents);
    }

    private Resident Resident(LocatedNode item) => new()
    {
        Id = item.TextOf("id")!,
        Name = item.TextOf("name")!,
        Room = (int)item.NumberOf("room")!.Value,
        Bed = item.TextOf("bed"),
        Unit = item.TextOf("unit"),
        Born = Day(item["born"]!, "born"),
        BandNumber = item.TextOf("bandNumber"),
        OrderedLimits = [.. item.ItemsOf("orderedLimits").Select(Limit)],
        ArmsNotToBeUsed = Arms(item["armsNotToBeUsed"]),
        UsualValues = [.. item.ItemsOf("usualValues").Select(Usual)],
        UsualOxygen = item["usualOxygen"] is { } oxygen ? new OxygenSupply(oxygen.NumberOf("litresPerMinute")) : null,
        OfficialName = item.TextOf("officialName"),
        ArmCentimetres = item.NumberOf("armCentimetres"),
        Devices = [.. item.ItemsOf("devices").Select(d => d.Text)],
        Isolation = item.TextOf("isolation"),
        PostureTest = item["postureTest"] is { } test ? new OrderedTest(test.TextOf("orderedBy")!, Day(test["orderedOn"]!, "orderedOn")) : null,
        Conditions = [.. item.ItemsOf("conditions").Select(c => c.Text)],
        Schedule = [.. item.ItemsOf("schedule").Select(Scheduled)],
        UsualFrozen = [.. item.ItemsOf("usualFrozen").Select(f => new UsualFreeze(f.TextOf("why")!, Day(f["from"]!, "from"), LastDay(f)))],
        Away = item["away"] is { } away ? new Absence(away.TextOf("why")!, Day(away["from"]!, "from"), LastDay(away)) : null,
        Moved = item["moved"] is { } moved ? new Move((int)moved.NumberOf("fromRoom")!.Value, moved.TextOf("fromBed"), Day(moved["on"]!, "on")) : null,
    };

    private ScheduledSign Scheduled(LocatedNode item)
    {
        Frequency every = RosterWords.Frequencies[item.TextOf("every")!];
        if ((item["weekday"] is not null && every != Frequency.Weekly) || (item["dayOfMonth"] is not null && every != Frequency.Monthly))
        {
            Fault(item.Line, "\"weekday\" belongs to \"weekly\" and \"dayOfMonth\" to \"monthly\"; leave it out or change \"every\"");
        }

        return new ScheduledSign(RosterWords.Signs[item.TextOf("sign")!], every, item.TextOf("orderedBy"))
        {
            Weekday = item.TextOf("weekday") is { } weekday ? RosterWords.Weekdays[weekday] : null,
            DayOfMonth = (int?)item.NumberOf("dayOfMonth"),
        };
    }

    private DateOnly? LastDay(LocatedNode item)
    {
        if (item["until"] is not { } until)
        {
            return null;
        }

        DateOnly last = Day(until, "until");
        if (last < Day(item["from"]!, "from"))
        {
            Fault(until.Line, "\"until\" lies before \"from\"; exchange them or leave \"until\" out");
        }

        return last;
    }

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
            RosterWords.Values[item.TextOf("value")!], least, greatest, item.TextOf("orderedBy")!, Day(item["orderedOn"]!, "orderedOn"))
        {
            Until = item["until"] is { } until ? Moment(until) : null,
        };
    }

    private UsualValue Usual(LocatedNode item)
    {
        LimitedValue value = RosterWords.Values[item.TextOf("value")!];
        if (item["site"] is { } site && value != LimitedValue.TemperatureFahrenheit)
        {
            Fault(site.Line, "\"site\" belongs to a temperature alone; leave it out");
        }

        return new UsualValue(value, Math.Round(values.Exact(item, "median") ?? 0, 1, MidpointRounding.AwayFromZero))
        {
            Site = item.TextOf("site") is { } word ? RosterWords.Sites[word] : null,
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

    private void Fault(int line, string reason) => errors.Add(new(path, line, reason));
}
