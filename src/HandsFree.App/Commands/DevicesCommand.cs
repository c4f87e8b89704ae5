using System.CommandLine;
using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.App.Live;
using HandsFree.Audio.Devices;
using HandsFree.Core.Files;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree devices": microphones and loudspeakers, and which are used.</summary>
internal static class DevicesCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Option<bool> keep = new("--keep") { Description = "Keep what --sound, --microphone and --loudspeaker name, for this machine" };
        Option<bool> forget = new("--forget") { Description = "Forget what was kept" };
        SoundOptions sound = new();
        Command command = new("devices", "Lists microphones and loudspeakers; keeps which are used") { json, keep, forget };
        sound.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            string file = services.GetRequiredService<HomeFolder>().SoundFile;
            if (parsed.GetValue(forget))
            {
                File.Delete(file);
            }

            (SoundSettings settings, IReadOnlyList<FileError> errors) = sound.Settings(parsed, services);
            if (errors.Count > 0)
            {
                return host.RefuseAll(errors.Select(e => e.ToString()));
            }

            (ISoundSystem? system, string? whyNone) = SoundSystems.Open(services.GetRequiredService<TimeProvider>(), settings.System);
            (IReadOnlyList<SoundDevice> devices, SoundFault? fault) = system?.List() ?? ([], null);
            if (system is null || fault is not null)
            {
                return host.Refuse($"{whyNone ?? fault!.Text}; a round by keys alone needs no sound: handsfree round --keys");
            }

            (SoundDevice? microphone, SoundFault? noMicrophone) = DeviceChoice.Of(devices, SoundFlow.Capture, settings.Microphone);
            (SoundDevice? loudspeaker, SoundFault? noLoudspeaker) = DeviceChoice.Of(devices, SoundFlow.Playback, settings.Loudspeaker);
            SoundDevice?[] used = [microphone, loudspeaker];
            host.Surroundings.Out.WriteLine(parsed.GetValue(json)
                ? JsonSerializer.Serialize(new
                {
                    system = system.Name,
                    devices = devices.Select(d => new { name = d.Name, description = d.Description, flow = $"{d.Flow}", monitor = d.IsMonitor, used = used.Contains(d) }),
                })
                : string.Join(Environment.NewLine, devices.Select(d => Line(d, used.Contains(d))).Prepend($"Sound: {system.Name}")));
            string[] missing = [.. new[] { noMicrophone, noLoudspeaker }.OfType<SoundFault>().Select(f => f.Text)];
            foreach (string text in missing)
            {
                host.Surroundings.Error.WriteLine(text);
            }

            return !parsed.GetValue(keep) ? ExitCodes.Done
                : missing.Length > 0 ? host.Refuse("nothing was kept")
                : settings.Write(file) is { } unwritten ? host.Refuse(unwritten)
                : ExitCodes.Done;
        });
    }

    private static string Line(SoundDevice device, bool used) =>
        $"{(used ? "*" : " ")} {(device.Flow == SoundFlow.Capture ? "microphone" : "loudspeaker"),-11}  {device.Name}  ({device.Description}{(device.IsMonitor ? "; hears a loudspeaker, only used when it is named" : "")})";
}
