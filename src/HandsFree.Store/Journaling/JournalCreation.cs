using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Makes a new journal file: complete under another name first, then given its own, so that a program killed
/// meanwhile leaves no half journal behind.</summary>
internal static class JournalCreation
{
    /// <summary>What is wrong, or null: then the file is there, made by this or by another program at the same moment.</summary>
    public static JournalError? Create(string path, JournalOptions options)
    {
        if (!Directory.Exists(Path.GetDirectoryName(path)))
        {
            return JournalErrors.NoFolder(path);
        }

        string draft = $"{path}.new-{Environment.ProcessId}";
        try
        {
            File.Delete(draft);
            WriteDraft(draft, options);
            File.Move(draft, path, overwrite: false);
            return null;
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
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
            DeleteIfThere(draft);
        }
    }

    private static void WriteDraft(string draft, JournalOptions options)
    {
        using SqliteConnection connection = JournalConnections.Open(draft, options, SqliteOpenMode.ReadWriteCreate);
        using (SqliteTransaction transaction = connection.BeginTransaction())
        {
            JournalConnections.Execute(connection, JournalSchema.Create);
            transaction.Commit();
        }

        JournalConnections.Execute(connection, "PRAGMA journal_mode = WAL;");
    }

    private static void DeleteIfThere(string draft)
    {
        if (File.Exists(draft))
        {
            File.Delete(draft);
        }
    }
}
