namespace HandsFree.Core.Dialogue;

/// <summary>The screen for a glance from two metres. No names: room and bed only.</summary>
/// <param name="Place">"Room 12 bed B", or empty.</param>
/// <param name="What">The quantity in question, with its unit, or empty.</param>
/// <param name="Digits">The value in large digits, or empty; the program blanks it after the home's time.</param>
/// <param name="Awaited">What is awaited, in a few words.</param>
public sealed record ScreenView(string Place, string What, string Digits, string Awaited);
