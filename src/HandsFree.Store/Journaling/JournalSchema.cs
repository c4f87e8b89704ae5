namespace HandsFree.Store.Journaling;

/// <summary>The journal's tables, as laid down in a new file. No plain column holds anything of a person.</summary>
internal static class JournalSchema
{
    /// <summary>SQLite's application_id of a journal: the letters HFJ1.</summary>
    public const int ApplicationId = 0x48464A31;

    /// <summary>SQLite's user_version: the format of the tables below. 1 and 2 lived for days before anybody used them and
    /// are refused.</summary>
    public const int Version = 3;

    /// <summary>The question for the last event's number, 0 where there is none.</summary>
    public const string LastSequence = "SELECT COALESCE(MAX(sequence), 0) FROM event;";

    /// <summary>The statements for a new file. The triggers hold for every program that opens the file: an event is
    /// never changed, never deleted, and each follows the last without a gap.</summary>
    public static readonly string Create = $"""
        PRAGMA application_id = {ApplicationId};
        PRAGMA user_version = {Version};
        CREATE TABLE journal (id BLOB NOT NULL) STRICT;
        CREATE TABLE device (number INTEGER PRIMARY KEY, public_key BLOB NOT NULL UNIQUE) STRICT;
        CREATE TABLE epoch (
            number INTEGER PRIMARY KEY,
            device INTEGER NOT NULL,
            salt BLOB NOT NULL UNIQUE,
            generation INTEGER NOT NULL
        ) STRICT;
        CREATE TABLE event (
            sequence INTEGER PRIMARY KEY,
            epoch INTEGER NOT NULL,
            counter INTEGER NOT NULL,
            keyring INTEGER NOT NULL,
            writer INTEGER NOT NULL,
            body BLOB NOT NULL,
            hash BLOB NOT NULL,
            signature BLOB NOT NULL
        ) STRICT;
        CREATE TABLE head (
            one INTEGER PRIMARY KEY CHECK (one = 1),
            device INTEGER NOT NULL,
            sequence INTEGER NOT NULL,
            hash BLOB NOT NULL,
            signature BLOB NOT NULL
        ) STRICT;
        CREATE TABLE keyring (version INTEGER PRIMARY KEY, body BLOB NOT NULL, signer INTEGER NOT NULL, signature BLOB NOT NULL) STRICT;
        CREATE TABLE key_slot (id BLOB PRIMARY KEY, kind INTEGER NOT NULL, salt BLOB NOT NULL, sealed BLOB NOT NULL) STRICT;
        CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
        BEGIN SELECT RAISE(ABORT, 'an event is never changed'); END;
        CREATE TRIGGER event_is_never_deleted BEFORE DELETE ON event
        BEGIN SELECT RAISE(ABORT, 'an event is never deleted'); END;
        CREATE TRIGGER event_follows_the_last BEFORE INSERT ON event
        WHEN NEW.sequence IS NOT (SELECT COALESCE(MAX(sequence), 0) + 1 FROM event)
        BEGIN SELECT RAISE(ABORT, 'an event follows the last one'); END;
        CREATE TRIGGER epoch_is_never_changed BEFORE UPDATE ON epoch
        BEGIN SELECT RAISE(ABORT, 'an epoch is never changed'); END;
        CREATE TRIGGER epoch_is_never_deleted BEFORE DELETE ON epoch
        BEGIN SELECT RAISE(ABORT, 'an epoch is never deleted'); END;
        CREATE TRIGGER keyring_is_never_changed BEFORE UPDATE ON keyring
        BEGIN SELECT RAISE(ABORT, 'a keyring is never changed'); END;
        CREATE TRIGGER keyring_is_never_deleted BEFORE DELETE ON keyring
        BEGIN SELECT RAISE(ABORT, 'a keyring is never deleted'); END;
        """;
}
