namespace HandsFree.Store.Devices;

/// <summary>The count of wrong tries, as it is kept on the disk.</summary>
/// <param name="Written">How often it was written: an older copy is found by this.</param>
/// <param name="By">Wrong tries by the slot's name, and when the last one was.</param>
/// <param name="LostAt">When the count was found to be gone or older than it must be; null where it never was.</param>
/// <param name="Failed">What no event in the journal tells yet.</param>
internal sealed record Tries(long Written, Dictionary<string, WrongTries> By, DateTimeOffset? LostAt, List<FailedOpening> Failed)
{
    public static Tries None => new(0, [], null, []);
}
