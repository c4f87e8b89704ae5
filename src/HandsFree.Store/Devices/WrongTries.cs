namespace HandsFree.Store.Devices;

/// <summary>Wrong tries at one slot since the last right one.</summary>
/// <param name="Wrong">How many.</param>
/// <param name="Last">When the last one was.</param>
internal sealed record WrongTries(int Wrong, DateTimeOffset Last);
