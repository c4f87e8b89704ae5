namespace HandsFree.Core.Journal;

/// <summary>The home's settings or its own rules from here on. Once somebody is set up they are read from here and from no file.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who changed them.</param>
/// <param name="At">When.</param>
/// <param name="File">"home.json" or "rules.json".</param>
/// <param name="Content">The file's content; null: there is none any more.</param>
public sealed record HomeFileKept(string Id, string Person, DateTimeOffset At, string File, string? Content) : JournalEvent(Id, Person, At);
