using System.CommandLine;
using HandsFree.App.Composition;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Files;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>--engine and --threads, and the choice that follows from them: --engine, else home.json, else the best that is here.</summary>
internal sealed class EngineOptions
{
    private readonly Option<string?> engine = new("--engine")
    {
        Description = $"The engine that hears: {string.Join(", ", EngineNames.All)} (default: what home.json says, else the best that is here)",
        HelpName = "ENGINE",
    };

    private readonly Option<int> threads = new("--threads")
    {
        Description = "Processor threads for one hearing, 1 to 64",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    public EngineOptions()
    {
        engine.AcceptOnlyFromAmong([.. EngineNames.All]);
        Ranges.Within(threads, 1, 64);
    }

    public void AddTo(Command command)
    {
        command.Options.Add(engine);
        command.Options.Add(threads);
    }

    /// <summary>Starts the engine; a broken home.json means none, with its errors in the line.</summary>
    public EngineChoice Start(ParseResult parsed, IServiceProvider services)
    {
        (string? wanted, string by) = (parsed.GetValue(engine), "--engine");
        if (wanted is null)
        {
            List<FileError> errors = [];
            HomeFolder folder = services.GetRequiredService<HomeFolder>();
            // Nobody is asked for a PIN only to know which engine the home likes: who needs more has opened it already.
            wanted = Home.IsSealed(folder)
                ? services.GetRequiredService<Unlocker>().OpensUnasked ? services.GetRequiredService<HomeOpening>().Home?.Settings.Engine : null
                : SettingsReader.Read(folder.SettingsFile, services.GetRequiredService<TimeProvider>().LocalTimeZone, errors).Engine;
            by = folder.SettingsFile;
            if (errors.Count > 0)
            {
                return EngineChoice.None(string.Join(Environment.NewLine, errors));
            }
        }

        TimeProvider time = services.GetRequiredService<TimeProvider>();
        long begun = time.GetTimestamp();
        EngineChoice choice = services.GetRequiredService<Engines>().Start(wanted, by, parsed.GetValue(threads));
        services.GetRequiredService<ProgramLog>().Note(LogKind.EngineStarted, time.GetElapsedTime(begun));
        return choice;
    }
}
