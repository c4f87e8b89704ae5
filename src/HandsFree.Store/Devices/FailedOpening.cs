namespace HandsFree.Store.Devices;

/// <summary>A try to open the journal, or a locked session, that failed. It is kept beside the journal until somebody opens it, for without
/// a key nothing can be written in it.</summary>
/// <param name="At">When.</param>
/// <param name="Who">The person whose PIN was tried; null where there is no such person, so that a PIN typed in the wrong place is kept nowhere.</param>
/// <param name="What">Which key was tried, or what was found.</param>
public sealed record FailedOpening(DateTimeOffset At, string? Who, string What);
