using System.Globalization;
using HandsFree.App.Homes.JsonFile;
using HandsFree.Core.Files;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>Reads home.json.</summary>
internal static class SettingsReader
{
    /// <summary>The settings; the defaults where the file is not there, and where it is broken, with the errors.</summary>
    /// <param name="path">home.json.</param>
    /// <param name="machineZone">The time zone where the file names none.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static HomeSettings Read(string path, TimeZoneInfo machineZone, ICollection<FileError> errors) =>
        Read(path, CheckedFile.Read(path, "home", errors), machineZone, errors);

    /// <summary>The settings of a file's bytes.</summary>
    /// <param name="name">How errors name it.</param>
    /// <param name="content">As home.json.</param>
    /// <param name="machineZone">The time zone where the content names none.</param>
    /// <param name="errors">Gets all that is wrong.</param>
    public static HomeSettings Read(string name, byte[] content, TimeZoneInfo machineZone, ICollection<FileError> errors) =>
        Read(name, CheckedFile.Of(name, content, "home", errors), machineZone, errors);

    private static HomeSettings Read(string path, LocatedNode? content, TimeZoneInfo machineZone, ICollection<FileError> errors)
    {
        HomeSettings settings = new() { TimeZone = machineZone };
        if (content is not { } file)
        {
            return settings;
        }

        TimeSpan Minutes(decimal? minutes, TimeSpan otherwise) => minutes is { } m ? TimeSpan.FromMinutes((double)m) : otherwise;
        TimeSpan Seconds(decimal? seconds, TimeSpan otherwise) => seconds is { } s ? TimeSpan.FromSeconds((double)s) : otherwise;
        LocatedNode? units = file["units"];
        LocatedNode? overdue = file["overdueMinutes"];
        return settings with
        {
            Name = file.TextOf("name"),
            TimeZone = Zone(file["timeZone"], path, errors) ?? machineZone,
            TemperatureUnit = units?.TextOf("temperature") == "celsius" ? TemperatureUnit.Celsius : TemperatureUnit.Fahrenheit,
            WeightUnit = units?.TextOf("weight") == "kilograms" ? WeightUnit.Kilograms : WeightUnit.Pounds,
            Shifts = file["shifts"] is { } shifts ? Shifts(shifts, path, errors) : settings.Shifts,
            Overdue = new Overdue(
                Minutes(overdue?.NumberOf("reportNow"), settings.Overdue.ReportNow),
                Minutes(overdue?.NumberOf("reportThisShift"), settings.Overdue.ReportThisShift),
                Minutes(overdue?.NumberOf("recheck"), settings.Overdue.Recheck)),
            Wording = file["wording"]?.TextOf("refused") is { } refused ? new Wording(refused) : settings.Wording,
            Engine = file.TextOf("engine"),
            Aide = file.TextOf("aide") ?? settings.Aide,
            PulseCountSeconds = (int)(file.NumberOf("pulseCountSeconds") ?? settings.PulseCountSeconds),
            BreathsInThirtySeconds = file["breathsInThirtySeconds"] is { } breaths ? ShortCount(breaths, path, errors) : null,
            LongestPause = Minutes(file.NumberOf("longestPauseMinutes"), settings.LongestPause),
            WordsReadable = TimeSpan.FromHours((double)(file.NumberOf("wordsReadableHours") ?? (decimal)settings.WordsReadable.TotalHours)),
            AnswerAwaited = Seconds(file.NumberOf("answerAwaitedSeconds"), settings.AnswerAwaited),
            LeadAfter = Seconds(file.NumberOf("leadAfterSeconds"), settings.LeadAfter),
            LockAfter = Minutes(file["lock"]?.NumberOf("minutes"), settings.LockAfter),
            UnlocksBySpokenDigits = file["lock"]?["spokenDigits"]?.Kind == System.Text.Json.JsonValueKind.True,
            KeepingAudio = file["keepAudio"] is { } audio ? Audio(audio, path, errors) : null,
            Exchange = file["exchange"] is { } exchange ? new(exchange.TextOf("residents")!, exchange.TextOf("people"), exchange.TextOf("places")) : null,
            NamesOnScreen = file["namesOnScreen"]?.Kind == System.Text.Json.JsonValueKind.True,
            News2 = file["news2"]?.Kind == System.Text.Json.JsonValueKind.True,
            Due = file["due"] is { } due ? Due(due, path, errors) : settings.Due,
        };
    }

    private static TimeZoneInfo? Zone(LocatedNode? name, string path, ICollection<FileError> errors)
    {
        TimeZoneInfo? zone = name is null ? null : ZoneName.Find(name.Text);
        if (name is not null && zone is null)
        {
            errors.Add(new(path, name.Line, $"\"timeZone\" is {name.InWords}, which this machine does not know; write an IANA name such as \"America/Chicago\" (and see that the machine has its time zone data{(OperatingSystem.IsWindows() ? "" : ", on Debian the package tzdata")})"));
        }

        return zone;
    }

    private static KeepingAudio Audio(LocatedNode approval, string path, ICollection<FileError> errors) =>
        new(approval.TextOf("approvedBy")!, ApprovedOn(approval, path, errors), (int)(approval.NumberOf("days") ?? KeepingAudio.UsualDays));

    private static ShortCountOfBreaths ShortCount(LocatedNode approval, string path, ICollection<FileError> errors) =>
        new(approval.TextOf("approvedBy")!, ApprovedOn(approval, path, errors));

    private static DateOnly ApprovedOn(LocatedNode approval, string path, ICollection<FileError> errors)
    {
        string on = approval.TextOf("approvedOn")!;
        if (!DateOnly.TryParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
        {
            errors.Add(new(path, approval["approvedOn"]!.Line, $"\"approvedOn\" is \"{on}\", and there is no such day"));
        }

        return day;
    }

    private static List<Shift> Shifts(LocatedNode list, string path, ICollection<FileError> errors)
    {
        List<Shift> shifts = [];
        foreach (LocatedNode item in list.Items)
        {
            Shift shift = new(item.TextOf("name")!, TimeOnly.ParseExact(item.TextOf("begins")!, "HH:mm", CultureInfo.InvariantCulture));
            if (shifts.Exists(other => other.Begins == shift.Begins))
            {
                errors.Add(new(path, item.Line, $"\"shifts\" has two that begin at {shift.Begins:HH\\:mm}; keep one"));
            }

            shifts.Add(shift);
        }

        return [.. shifts.OrderBy(shift => shift.Begins)];
    }

    private static List<VitalSign> Due(LocatedNode list, string path, ICollection<FileError> errors)
    {
        List<VitalSign> due = [];
        foreach (LocatedNode item in list.Items)
        {
            VitalSign sign = RosterWords.Signs[item.Text];
            if (due.Contains(sign))
            {
                errors.Add(new(path, item.Line, $"\"due\" has {item.InWords} twice; keep one"));
            }

            due.Add(sign);
        }

        return due;
    }
}
