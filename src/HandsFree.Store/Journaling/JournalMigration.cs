using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Brings a journal of format 1 (plain bytes) to the present one: every event is sealed into a new file, which takes the old
/// one's place only when it is complete and flushed.</summary>
internal static class JournalMigration
{
    private const int Plain = 1;

    /// <summary>What is wrong, or null: then the file is of the present format, or of none that this knows.</summary>
    public static JournalError? ToPresent(string path, JournalAccess access, JournalOptions options)
    {
        if (VersionOf(path, options) != Plain)
        {
            return null;
        }

        using FileStream guard = FileGuard.Take($"{path}.migrating", access.Time);
        if (VersionOf(path, options) != Plain)
        {
            return null; // another program did it meanwhile
        }

        string draft = $"{path}.new-{Environment.ProcessId}";
        try
        {
            JournalCreation.DeleteDraft(draft);
            JournalCreation.WriteDraft(draft, access.States, options);
            using (SqliteConnection old = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite))
            {
                // Nobody else has the file from here on, and its log is folded into it.
                JournalConnections.Execute(old, "PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE;");
                Copy(old, draft, access, options);
                if (!OperatingSystem.IsWindows())
                {
                    File.Move(draft, path, overwrite: true);
                }
            }

            if (OperatingSystem.IsWindows())
            {
                File.Move(draft, path, overwrite: true); // an open file can't be replaced there
            }

            return null;
        }
        finally
        {
            JournalCreation.DeleteDraft(draft);
        }
    }

    private static void Copy(SqliteConnection old, string draft, JournalAccess access, JournalOptions options)
    {
        JournalOpening opening = JournalOpener.Open(draft, access with { Credential = new Credential.Device() }, options);
        using Journal journal = opening.Journal ?? throw new IOException(opening.Error!.Message);
        using SqliteCommand command = old.CreateCommand();
        command.CommandText = "SELECT body FROM event ORDER BY sequence;";
        using SqliteDataReader reader = command.ExecuteReader();
        List<ReadOnlyMemory<byte>> batch = [];
        while (reader.Read())
        {
            batch.Add(reader.GetFieldValue<byte[]>(0));
            if (batch.Count == 1000)
            {
                journal.AppendAll(batch);
                batch.Clear();
            }
        }

        if (batch.Count > 0)
        {
            journal.AppendAll(batch);
        }
    }

    private static long VersionOf(string path, JournalOptions options)
    {
        using SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        return JournalConnections.Number(connection, "PRAGMA application_id;") == JournalSchema.ApplicationId
            ? JournalConnections.Number(connection, "PRAGMA user_version;")
            : 0;
    }
}
