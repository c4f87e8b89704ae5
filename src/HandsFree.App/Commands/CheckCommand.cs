using HandsFree.App.Unlocking;
using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Checks;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Live;
using HandsFree.Audio.Devices;
using HandsFree.Core.Files;
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
        Option<bool> practice = new("--practice") { Description = $"Also one sentence that is spoken now: \"{PracticeSentence.Sentence}\" (asked for by itself at a terminal)" };
        EngineOptions engine = new();
        SoundOptions sound = new();
        Command command = new("check", "Tests what a round needs: engine, recording, detector, voice, home, journal, microphone, loudspeaker, room") { json, practice };
        engine.AddTo(command);
        sound.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            EngineChoice choice = engine.Start(parsed, services);
            using IRecognizer? recognizer = choice.Recognizer;
            SelfTest test = new(
                services.GetRequiredService<GrammarShelf>(),
                services.GetRequiredService<FileHearing>(),
                services.GetRequiredService<ProgramPaths>(),
                services.GetRequiredService<HomeFolder>(),
                IsShut(services) ? null : services.GetRequiredService<HomeOpening>(),
                services.GetRequiredService<TimeProvider>());
            (SoundSettings settings, IReadOnlyList<FileError> errors) = sound.Settings(parsed, services);
            string soundFile = services.GetRequiredService<HomeFolder>().SoundFile;
            SoundCheck soundCheck = new(settings, services.GetRequiredService<TimeProvider>(), s => Keep(soundFile, s.EchoMilliseconds));
            bool speaks = recognizer is not null && (parsed.GetValue(practice) || (host.Surroundings.IsInteractive && !parsed.GetValue(json)));
            CheckResult[] results =
            [
                .. test.Run(choice),
                .. errors.Select(e => new CheckResult("sound", CheckState.Failed, e.ToString())),
                .. soundCheck.Run(speaks ? microphone => Practise(host, services, recognizer!, microphone) : null),
            ];
            IReadOnlyList<string> next = NextSteps.Of(results);
            bool ok = results.All(result => result.State != CheckState.Failed);
            host.Surroundings.Out.WriteLine(parsed.GetValue(json)
                ? JsonSerializer.Serialize(
                    new { ok, engine = recognizer?.Name, checks = results.Select(r => new { name = r.Name, state = r.Word, text = r.Text }), next }, Options)
                : string.Join(Environment.NewLine, [.. results.Select(r => $"{r.Word,-8} {r.Name}: {r.Text}"), "Next:", .. next.Select((step, i) => $"{i + 1}. {step}")]));
            if (ok)
            {
                return ExitCodes.Done;
            }

            host.Refuse($"check failed: {string.Join("; ", results.Where(r => r.State == CheckState.Failed).Select(r => $"{r.Name}: {r.Text}"))}");
            return ExitCodes.CheckFailed;
        });
    }

    // A check asks nobody for a PIN: without one it looks at what it can see.
    private static bool IsShut(IServiceProvider services) =>
        !services.GetRequiredService<Unlocker>().OpensUnasked && Home.IsSealed(services.GetRequiredService<HomeFolder>());

    private static CheckResult Practise(CommandHost host, IServiceProvider services, IRecognizer recognizer, ICaptureStream microphone)
    {
        PracticeSentence practice = new(services.GetRequiredService<FileHearing>(), recognizer, services.GetRequiredService<GrammarShelf>().Of("readings"));
        host.Surroundings.Error.WriteLine($"Say now, as you would at the bed: \"{PracticeSentence.Sentence}\"");
        return practice.Run(microphone, host.Surroundings.Error.WriteLine);
    }

    // Only what was measured: what this run was told of devices is not kept.
    private static string? Keep(string file, int? echo)
    {
        List<FileError> errors = [];
        SoundSettings kept = SoundSettings.Read(file, errors);
        return errors.Count > 0 ? errors[0].ToString() : (kept with { EchoMilliseconds = echo }).Write(file);
    }
}
