using System.CommandLine;
using HandsFree.App.Hearing;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree hear": recordings to readings.</summary>
internal static class HearCommand
{
    public static Command Make(CommandHost host)
    {
        EngineOptions engine = new();
        Command command = new("hear", "Hears recordings: what was read out in each, and how sure that is");
        engine.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            EngineChoice choice = engine.Start(parsed, services);
            using var r = choice.Recognizer;
            host.Surroundings.Out.WriteLine(choice.Line);
            return 0;
        });
    }
}
