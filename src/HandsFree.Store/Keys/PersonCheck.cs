namespace HandsFree.Store.Keys;

/// <summary>What came of asking whether somebody is who she says.</summary>
/// <param name="IsRight">Whether she is.</param>
/// <param name="Wait">How long until another try counts; zero where at once.</param>
public readonly record struct PersonCheck(bool IsRight, TimeSpan Wait);
