namespace HandsFree.Store.Journaling;

/// <summary>The journal's tables, as laid down in a new file.</summary>
internal static class JournalSchema
{
    /// <summary>SQLite's application_id of a journal: the letters HFJ1.</summary>
    public const int ApplicationId = 0x48464A31;

    /// <summary>SQLite's user_version: the format of the tables below.</summary>
    public const int Version = 1;

    /// <summary>The question for the last event's number, 0 where there is none.</summary>
    public const string LastSequence = "SELECT COALESCE(MAX(sequence), 0) FROM event;";

    /// <summary>The statements for a new file. The triggers hold for every program that opens the file: an event is
    /// never changed, never deleted, and each follows the last without a gap.</summary>
    public static readonly string Create = $"""
        PRAGMA application_id = {ApplicationId};
        PRAGMA user_version = {Version};
        CREATE TABLE event (
            sequence INTEGER PRIMARY KEY,
            body BLOB NOT NULL
        ) STRICT;
        CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
        BEGIN SELECT RAISE(ABORT, 'an event is never changed'); END;
        CREATE TRIGGER event_is_never_deleted BEFORE DELETE ON event
        BEGIN SELECT RAISE(ABORT, 'an event is never deleted'); END;
        CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event
        WHEN NEW.sequence IS NOT (SELECT COALESCE(MAX(sequence), 0) + 1 FROM event)
        BEGIN SELECT RAISE(ABORT, 'an event follows the last one'); END;
        """;
}
