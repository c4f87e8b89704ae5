using HandsFree.Core.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Csv;

namespace HandsFree.Exchange.Rosters;

/// <summary>Reads residents from a table with the columns of <see cref="RosterColumns"/>.</summary>
public static class RosterCsv
{
    /// <summary>Every line is checked.</summary>
    /// <param name="file">The name that errors carry.</param>
    /// <param name="content">The file's bytes.</param>
    /// <param name="units">The home's units.</param>
    /// <param name="zone">The home's time zone, for the end of a limit.</param>
    public static ImportedRoster Read(string file, byte[] content, RosterUnits units, TimeZoneInfo zone)
    {
        List<FileError> errors = [];
        if (CsvTable.Read(file, content, RosterColumns.All, RosterColumns.Needed, errors) is not { } table)
        {
            return ImportedRoster.Of([], errors, []);
        }

        if (table.Rows.Count == 0 && errors.Count == 0)
        {
            errors.Add(new(file, 0, "has no residents; write a line for each below the names of the columns"));
        }

        RosterCells cells = new(file, units, zone, errors);
        Resident[] residents = [.. table.Rows.Select(row => Resident(row, cells))];
        foreach ((int index, string reason) in RosterFaults.Of(residents, i => $"line {table.Rows[i].Line}"))
        {
            errors.Add(new(file, table.Rows[index].Line, reason.Replace("bandNumber", RosterColumns.BandNumber, StringComparison.Ordinal)));
        }

        return ImportedRoster.Of([.. residents.Select((r, i) => new ImportedResident(r, table.Columns, $"line {table.Rows[i].Line}"))], errors, []);
    }

    private static Resident Resident(CsvRow row, RosterCells cells) => new()
    {
        Id = row[RosterColumns.Id]?.Text ?? "",
        Name = row[RosterColumns.Name]?.Text ?? "",
        OfficialName = row[RosterColumns.OfficialName]?.Text,
        Room = cells.Whole(row[RosterColumns.Room], 1, 999),
        Bed = cells.Bed(row[RosterColumns.Bed]),
        Unit = row[RosterColumns.Unit]?.Text,
        Born = cells.Day(row[RosterColumns.Born]),
        BandNumber = cells.BandNumber(row[RosterColumns.BandNumber]),
        OrderedLimits = cells.Each(row[RosterColumns.OrderedLimits], cells.Limit),
        ArmsNotToBeUsed = cells.Arms(row[RosterColumns.Arms]),
        UsualValues = cells.Each(row[RosterColumns.UsualValues], cells.Usual),
        UsualOxygen = row[RosterColumns.Oxygen] is { } oxygen ? Oxygen(oxygen, cells) : null,
        ArmCentimetres = cells.Number(row[RosterColumns.ArmCentimetres], 10, 80),
        Devices = cells.Each(row[RosterColumns.Devices], (_, text) => text),
        Conditions = cells.Each(row[RosterColumns.Conditions], cells.Condition),
        Schedule = cells.Each(row[RosterColumns.Schedule], cells.Scheduled),
        UsualFrozen = [.. cells.Each(row[RosterColumns.UsualFrozen], cells.Period).Select(p => new UsualFreeze(p.Why, p.From, p.Until))],
        Isolation = row[RosterColumns.Isolation]?.Text,
        PostureTest = row[RosterColumns.PostureTest] is { } test ? cells.Test(test) : null,
        Away = cells.Each(row[RosterColumns.Away], cells.Period) is [var away, ..] ? new Absence(away.Why, away.From, away.Until) : null,
    };

    private static OxygenSupply? Oxygen(CsvCell cell, RosterCells cells) => cell.Text.ToLowerInvariant() switch
    {
        "air" or "room air" => OxygenSupply.RoomAir,
        "unsaid" => OxygenSupply.FlowUnsaid,
        _ => cells.Number(cell, 0, 60) is { } litres ? new OxygenSupply(litres) : null,
    };
}
