using HandsFree.Store.Devices;

namespace HandsFree.Store.Journaling;

/// <summary>A device gives up its part of a journal.</summary>
public static class JournalRetirement
{
    /// <summary>Destroys the device's secret and what it remembers of the place. No PIN opens any copy of the journal here any more.</summary>
    /// <param name="path">The journal, closed.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <param name="journal">The journal's id, 32 hex digits.</param>
    /// <exception cref="IOException">Something of it can't be deleted.</exception>
    /// <exception cref="UnauthorizedAccessException">Something of it may not be deleted.</exception>
    public static void Retire(string path, string states, string journal)
    {
        DeviceState.Erase(states, Convert.FromHexString(journal));
        Place.Forget(states, Path.GetFullPath(path));
    }
}
