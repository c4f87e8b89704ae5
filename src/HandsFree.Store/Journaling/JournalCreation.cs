using System.Security.Cryptography;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Makes a new journal file: complete under another name first, then given its own, so that a program killed
/// meanwhile leaves no half journal behind.</summary>
internal static class JournalCreation
{
    /// <summary>What is wrong, or null: then the file is there, made by this or by another program at the same moment.</summary>
    public static JournalError? Create(string path, JournalAccess access, JournalOptions options)
    {
        if (!Directory.Exists(Path.GetDirectoryName(path)))
        {
            return JournalErrors.NoFolder(path);
        }

        string draft = $"{path}.new-{Environment.ProcessId}";
        try
        {
            DeleteDraft(draft);
            WriteDraft(draft, access, options);
            File.Move(draft, path, overwrite: false);
            return null;
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
        }
        catch (FileNotFoundException)
        {
            return JournalErrors.NotCreated(path, "writing is not allowed");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return JournalErrors.NotCreated(path, failure.Message.ReplaceLineEndings(" "));
        }
        catch (SqliteException failure) when (failure.SqliteErrorCode is SQLitePCL.raw.SQLITE_CANTOPEN)
        {
            return JournalErrors.NotCreated(path, "writing is not allowed");
        }
        catch (SqliteException failure)
        {
            return JournalErrors.From(path, failure);
        }
        finally
        {
            DeleteDraft(draft);
        }
    }

    /// <summary>A complete new journal under a name of its own, unlocked by this device alone.</summary>
    private static void WriteDraft(string draft, JournalAccess access, JournalOptions options)
    {
        byte[] id = RandomNumberGenerator.GetBytes(16);
        using DeviceState device = DeviceState.Make(access.States, id, access.Time);
        using DataKey key = DataKey.New();
        PrivateFile.Touch(draft);
        using SqliteConnection connection = JournalConnections.Open(draft, options, SqliteOpenMode.ReadWriteCreate);
        using (SqliteTransaction transaction = connection.BeginTransaction())
        {
            JournalConnections.Execute(connection, JournalSchema.Create);
            JournalRows.SetId(connection, id);
            JournalRows.SetSlot(connection, new KeyWrap(id, device.Secret).Wrap(key.Bytes, new Credential.Device()));
            transaction.Commit();
        }

        JournalConnections.Execute(connection, "PRAGMA journal_mode = WAL;");
    }

    /// <summary>Removes a draft and what SQLite keeps beside it.</summary>
    public static void DeleteDraft(string draft)
    {
        foreach (string file in new[] { draft, $"{draft}-wal", $"{draft}-shm" }.Where(File.Exists))
        {
            File.Delete(file);
        }
    }
}
