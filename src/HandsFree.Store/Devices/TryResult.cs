namespace HandsFree.Store.Devices;

/// <summary>What came of a try.</summary>
/// <param name="IsRight">Whether it was right.</param>
/// <param name="WasTried">False where a wait was not over, so that nothing was looked at.</param>
/// <param name="Wait">How long until the next try.</param>
/// <param name="IsClosed">Whether no try counts any more, until a supervisor gives a new PIN.</param>
internal readonly record struct TryResult(bool IsRight, bool WasTried, TimeSpan Wait, bool IsClosed);
