namespace HandsFree.Core.Journal;

/// <summary>A person chose digits that unlock her locked session when they are spoken, where the home allows it.</summary>
/// <param name="Id">Event id.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When.</param>
/// <param name="Who">Whose digits.</param>
/// <param name="Salt">16 random bytes in base 64.</param>
/// <param name="Hash">PBKDF2-SHA-256 of the digits, 32 bytes in base 64; never the digits themselves.</param>
public sealed record SpokenDigitsSet(string Id, string Person, DateTimeOffset At, string Who, string Salt, string Hash)
    : JournalEvent(Id, Person, At);
