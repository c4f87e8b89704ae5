namespace HandsFree.App.Homes;

/// <summary>A shift of the home.</summary>
/// <param name="Name">Such as "day".</param>
/// <param name="Begins">When it begins, every day, in the home's time zone; it ends when the next one begins.</param>
internal sealed record Shift(string Name, TimeOnly Begins);
