using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.Core.Files;

namespace HandsFree.App.FirstStart;

/// <summary>Asks for the home's settings and writes home.json.</summary>
/// <param name="ask">Asks.</param>
/// <param name="folder">The home's folder.</param>
/// <param name="machine">The time zone of this machine.</param>
internal sealed class HomeQuestions(Questions ask, HomeFolder folder, TimeZoneInfo machine)
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>Asks until the settings are good, then writes them.</summary>
    /// <returns>Null, or one line that says why they can't be written.</returns>
    public string? Run()
    {
        while (true)
        {
            JsonObject settings = Asked();
            if (ask.Left)
            {
                return null;
            }

            HomeFolder.Make(folder.Path);
            if (AtomicFile.Write(folder.SettingsFile, JsonSerializer.SerializeToUtf8Bytes(settings, Indented)) is { } unwritten)
            {
                return unwritten;
            }

            List<FileError> errors = [];
            SettingsReader.Read(folder.SettingsFile, machine, errors);
            if (errors.Count == 0)
            {
                ask.Say($"Kept in {folder.SettingsFile}.");
                return null;
            }

            File.Delete(folder.SettingsFile);
            errors.ForEach(error => ask.Say($"  {error.Reason}"));
            ask.Say("Once more:");
        }
    }

    private JsonObject Asked()
    {
        string name = ask.Ask("The home's name", "", "Stands on printed pages. May be left empty.");
        string zone = ask.Ask("Time zone", ZoneName.Iana(machine), "A name such as America/Chicago; all times in the record are of this zone.");
        string temperature = ask.Choose("Temperatures in", ["fahrenheit", "celsius"], "As the thermometers show them.");
        string weight = ask.Choose("Weights in", ["pounds", "kilograms"], "As the scales show them.");
        string times = ask.Ask("Shifts begin at", "07:00 15:00 23:00", "Times parted by blanks, of 24 hours. The handover looks back to the last one.");
        JsonArray shifts = [];
        foreach (string begins in times.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            shifts.Add(new JsonObject { ["name"] = string.Create(CultureInfo.InvariantCulture, $"shift {shifts.Count + 1}"), ["begins"] = begins });
        }

        JsonObject settings = new()
        {
            ["timeZone"] = zone,
            ["units"] = new JsonObject { ["temperature"] = temperature, ["weight"] = weight },
            ["shifts"] = shifts,
        };
        if (name.Length > 0)
        {
            settings["name"] = name;
        }

        return settings;
    }
}
