namespace HandsFree.Audio.Devices;

/// <summary>Names of devices for people.</summary>
internal static class DeviceNames
{
    /// <summary>Gives each device a name of its own: of those with the same name the second is "… (2)", in the order of their ids, so
    /// that a name means the same device at the next start.</summary>
    /// <param name="devices">Each with the system's id and the name that the system shows.</param>
    /// <returns>The same devices in the same order.</returns>
    internal static (string Id, string Name)[] Different(IReadOnlyList<(string Id, string Name)> devices) =>
    [
        .. devices.Select(d => (d.Id, devices.Count(o => o.Name == d.Name && string.CompareOrdinal(o.Id, d.Id) < 0) is > 0 and int before
            ? $"{d.Name} ({before + 1})"
            : d.Name)),
    ];
}
