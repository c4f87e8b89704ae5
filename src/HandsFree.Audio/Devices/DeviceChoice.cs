namespace HandsFree.Audio.Devices;

/// <summary>Which device is opened.</summary>
public static class DeviceChoice
{
    /// <summary>The one that is named by its name or, where only one has it, by its description; where none is named, the default one unless it is a monitor, else the first that is
    /// none: a program that listened to a loudspeaker's monitor would hear itself.</summary>
    public static (SoundDevice? Device, SoundFault? Fault) Of(IReadOnlyList<SoundDevice> devices, SoundFlow flow, string? name)
    {
        SoundDevice[] there = [.. devices.Where(d => d.Flow == flow)];
        SoundDevice[] usable = [.. there.Where(d => !d.IsMonitor)];
        SoundDevice? chosen = name is null
            ? usable.FirstOrDefault(d => d.IsDefault) ?? usable.FirstOrDefault()
            : there.FirstOrDefault(d => d.Name == name) ?? Described(there, name);
        string word = flow == SoundFlow.Capture ? "microphone" : "loudspeaker";
        return chosen is not null ? (chosen, null)
            : name is not null ? (null, new SoundFault(SoundProblem.NoDevice, $"the {word} \"{name}\" is not there; plug it in, or choose another: {Names(usable)}"))
            : (null, new SoundFault(SoundProblem.NoDevice, $"there is no {word}; plug one in"));
    }

    private static SoundDevice? Described(SoundDevice[] there, string name) =>
        there.Where(d => string.Equals(d.Description, name, StringComparison.OrdinalIgnoreCase)).ToArray() is [var only] ? only : null;

    private static string Names(SoundDevice[] devices) => devices.Length == 0 ? "there is none" : string.Join(", ", devices.Select(d => d.Name));
}
