using System.Text.Json;
using System.Text.Json.Serialization;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Homes.JsonFile;
using HandsFree.Core.Files;

namespace HandsFree.App.Live;

/// <summary>Which sound devices this machine uses: sound.json in the device's state folder, for a home may be copied to another one.</summary>
internal sealed record SoundSettings
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>"pulse", "alsa" or "wasapi"; null for the best one.</summary>
    public string? System { get; init; }

    /// <summary>Name of the microphone; null for the usual one.</summary>
    public string? Microphone { get; init; }

    /// <summary>Name of the loudspeaker; null for the usual one.</summary>
    public string? Loudspeaker { get; init; }

    /// <summary>From the loudspeaker to the microphone, as "check" measured it.</summary>
    public int? EchoMilliseconds { get; init; }

    /// <summary>A second key for the microphone beside the space bar.</summary>
    public string? TalkKey { get; init; }

    /// <summary>Reads the file; the defaults where it is not there, and where it is broken, with the errors.</summary>
    public static SoundSettings Read(string path, ICollection<FileError> errors)
    {
        if (CheckedFile.Read(path, "sound", errors) is not { } file)
        {
            return new SoundSettings();
        }

        return new SoundSettings
        {
            System = file.TextOf("system"),
            Microphone = file.TextOf("microphone"),
            Loudspeaker = file.TextOf("loudspeaker"),
            EchoMilliseconds = (int?)file.NumberOf("echoMilliseconds"),
            TalkKey = file.TextOf("talkKey"),
        };
    }

    /// <summary>Keeps the settings.</summary>
    /// <returns>Null, or one line that says why they can't be kept.</returns>
    public string? Write(string path)
    {
        try
        {
            HomeFolder.Make(Path.GetDirectoryName(path)!);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return WriteFault.Of(path, e);
        }

        return AtomicFile.Write(path, [.. JsonSerializer.SerializeToUtf8Bytes(this, Options), (byte)'\n']);
    }
}
