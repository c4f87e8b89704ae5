using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Live;
using HandsFree.Audio.Devices;
using HandsFree.Core.Files;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>--sound, --microphone and --loudspeaker, and the settings that follow from them: what is given, else what this machine keeps.</summary>
internal sealed class SoundOptions
{
    private readonly Option<string?> system = new("--sound")
    {
        Description = $"The way to the sound: {string.Join(", ", SoundSystems.Names)} (default: what is kept, else the best that is here)",
        HelpName = "SYSTEM",
    };

    private readonly Option<string?> microphone = new("--microphone")
    {
        Description = "The microphone, by a name of \"handsfree devices\" (default: what is kept, else the usual one)",
        HelpName = "NAME",
    };

    private readonly Option<string?> loudspeaker = new("--loudspeaker")
    {
        Description = "The loudspeaker or earpiece, by a name of \"handsfree devices\" (default: what is kept, else the usual one)",
        HelpName = "NAME",
    };

    public SoundOptions() => system.AcceptOnlyFromAmong([.. SoundSystems.Names]);

    public void AddTo(Command command)
    {
        command.Options.Add(system);
        command.Options.Add(microphone);
        command.Options.Add(loudspeaker);
    }

    /// <summary>What is to be used, or what is wrong with the file.</summary>
    public (SoundSettings Settings, IReadOnlyList<FileError> Errors) Settings(ParseResult parsed, IServiceProvider services)
    {
        List<FileError> errors = [];
        SoundSettings kept = SoundSettings.Read(services.GetRequiredService<HomeFolder>().SoundFile, errors);
        return (kept with
        {
            System = parsed.GetValue(system) ?? kept.System,
            Microphone = parsed.GetValue(microphone) ?? kept.Microphone,
            Loudspeaker = parsed.GetValue(loudspeaker) ?? kept.Loudspeaker,
        }, errors);
    }
}
