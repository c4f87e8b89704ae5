using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The journal in one SQLite file (write-ahead log, each commit flushed). Safe for several threads; other
/// processes may read, and write in turn.</summary>
public sealed class Journal : IJournal
{
    private readonly Lock _writing = new();
    private readonly string _path;
    private readonly JournalOptions _options;
    private readonly SqliteConnection _connection;

    private Journal(string path, JournalOptions options, SqliteConnection connection)
    {
        _path = path;
        _options = options;
        _connection = connection;
    }

    /// <inheritdoc/>
    public long Count
    {
        get
        {
            lock (_writing)
            {
                try
                {
                    return JournalConnections.Number(_connection, JournalSchema.LastSequence);
                }
                catch (SqliteException failure)
                {
                    throw new JournalReadException(JournalErrors.From(_path, failure), failure);
                }
            }
        }
    }

    /// <summary>Opens a journal, and makes a new one only where there is no such file.</summary>
    /// <param name="path">The file; its folder must exist. SQLite keeps two more files beside it (-wal, -shm).</param>
    /// <param name="options">Waiting time and limit; the defaults where null.</param>
    /// <returns>The journal, or one line that says what is wrong; a file that is refused is not changed.</returns>
    public static JournalOpening Open(string path, JournalOptions? options = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        JournalOptions chosen = options ?? new JournalOptions();
        ArgumentOutOfRangeException.ThrowIfLessThan(chosen.BusySeconds, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(chosen.BusySeconds, 60, nameof(options));
        string full = Path.GetFullPath(path);
        try
        {
            return OpenFile(full, chosen);
        }
        catch (SqliteException failure)
        {
            return new JournalOpening(JournalErrors.From(full, failure));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new JournalOpening(new JournalError(
                JournalProblem.NoAccess, $"journal {full}: can't be opened ({failure.Message.ReplaceLineEndings(" ")}); check the file and its folder"));
        }
    }

    /// <inheritdoc/>
    public long Append(ReadOnlyMemory<byte> body) => AppendAll([body]);

    /// <inheritdoc/>
    public long AppendAll(IReadOnlyList<ReadOnlyMemory<byte>> bodies)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        ArgumentOutOfRangeException.ThrowIfZero(bodies.Count, nameof(bodies));
        lock (_writing)
        {
            try
            {
                return Write(bodies);
            }
            catch (SqliteException failure)
            {
                throw new JournalWriteException(JournalErrors.From(_path, failure), failure);
            }
        }
    }

    /// <inheritdoc/>
    public IEnumerable<JournalEntry> ReadFrom(long sequence)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sequence, 1);
        return JournalReading.Entries(_path, _options, sequence);
    }

    /// <summary>Closes the file; SQLite folds its write-ahead log into it.</summary>
    public void Dispose() => _connection.Dispose();

    private static JournalOpening OpenFile(string path, JournalOptions options)
    {
        if (Directory.Exists(path))
        {
            return new JournalOpening(JournalErrors.IsFolder(path));
        }

        JournalError? error = File.Exists(path) ? null : JournalCreation.Create(path, options);
        error ??= JournalCheck.File(path);
        if (error is not null)
        {
            return new JournalOpening(error);
        }

        SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        try
        {
            error = JournalCheck.Content(path, connection);
        }
        catch
        {
            connection.Dispose();
            throw;
        }

        if (error is null)
        {
            return new JournalOpening(new Journal(path, options, connection));
        }

        connection.Dispose();
        return new JournalOpening(error);
    }

    private long Write(IReadOnlyList<ReadOnlyMemory<byte>> bodies)
    {
        // Not deferred: the write lock is taken before the last number is read, so that writers take turns.
        using SqliteTransaction transaction = _connection.BeginTransaction(deferred: false);
        long last = JournalConnections.Number(_connection, JournalSchema.LastSequence);
        using SqliteCommand insert = _connection.CreateCommand();
        insert.CommandText = "INSERT INTO event (sequence, body) VALUES ($sequence, $body);";
        SqliteParameter number = insert.Parameters.Add("$sequence", SqliteType.Integer);
        SqliteParameter body = insert.Parameters.Add("$body", SqliteType.Blob);
        foreach (ReadOnlyMemory<byte> each in bodies)
        {
            number.Value = ++last;
            body.Value = each.ToArray();
            insert.ExecuteNonQuery();
        }

        transaction.Commit();
        return last;
    }
}
