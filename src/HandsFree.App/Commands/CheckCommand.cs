using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Checks;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree check": the self-test.</summary>
internal static class CheckCommand
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object" };
        EngineOptions engine = new();
        Command command = new("check", "Tests what a round needs: engine, recording, detector, voice, home, journal") { json };
        engine.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            EngineChoice choice = engine.Start(parsed, services);
            using IRecognizer? recognizer = choice.Recognizer;
            SelfTest test = new(
                services.GetRequiredService<GrammarShelf>(),
                services.GetRequiredService<FileHearing>(),
                services.GetRequiredService<HomeFolder>(),
                services.GetRequiredService<HomeOpening>());
            CheckResult[] results = [.. test.Run(choice)];
            bool ok = results.All(result => result.State != CheckState.Failed);
            host.Surroundings.Out.WriteLine(parsed.GetValue(json)
                ? JsonSerializer.Serialize(
                    new { ok, engine = recognizer?.Name, checks = results.Select(r => new { name = r.Name, state = r.Word, text = r.Text }) }, Options)
                : string.Join(Environment.NewLine, results.Select(r => $"{r.Word,-8} {r.Name}: {r.Text}")));
            if (ok)
            {
                return ExitCodes.Done;
            }

            host.Refuse($"check failed: {string.Join("; ", results.Where(r => r.State == CheckState.Failed).Select(r => $"{r.Name}: {r.Text}"))}");
            return ExitCodes.CheckFailed;
        });
    }
}
