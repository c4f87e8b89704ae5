using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using HandsFree.Store.Recordings;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The journal in one SQLite file (write-ahead log, each commit flushed), each event sealed by itself and chained to the one
/// before, the chain's end signed by the device with every commit. Safe for several threads; other processes may read, and write in
/// turn.</summary>
public sealed class Journal : IJournal
{
    private readonly Lock _writing = new();
    private readonly JournalUnlocked _unlocked;
    private readonly SqliteConnection _connection;
    private readonly JournalInsert _insert;
    private EventSealer _sealer;
    private long _device;
    private long _epoch;
    private bool _isFlushed = true;
    private bool _closed;

    internal Journal(JournalUnlocked unlocked, SqliteConnection connection)
    {
        _unlocked = unlocked;
        _connection = connection;
        _sealer = new EventSealer(unlocked.Keys, unlocked.Id, unlocked.Device.Id);
        _insert = new JournalInsert(connection);
        People = new JournalPeople(unlocked, Change);
    }

    /// <summary>Who unlocked it; null where the device alone did, because nobody is set up.</summary>
    public Holder? Holder => _unlocked.Holder;

    /// <summary>Who may unlock it.</summary>
    public JournalPeople People { get; }

    /// <summary>The id, 32 hex digits.</summary>
    public string Id => Convert.ToHexStringLower(_unlocked.Id);

    /// <summary>How it ends: the last event's number and the first 8 hex digits of its hash. Printed on paper it shows later, outside of the
    /// machine, whether the journal still has what it had.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public (long Sequence, string Hash) End => Locked(
        connection =>
        {
            (long sequence, byte[] hash) = JournalRows.Last(connection, _unlocked.Id);
            return (sequence, Convert.ToHexStringLower(hash)[..8]);
        },
        (error, cause) => new JournalReadException(error, cause));

    /// <summary>Why this device could not keep the chain's end the last time; null where it did. All events are saved all the same.</summary>
    public string? HeadNotKept { get; private set; }

    /// <inheritdoc/>
    public long Count => Locked(
        connection => JournalConnections.Number(connection, JournalSchema.LastSequence), (error, cause) => new JournalReadException(error, cause));

    /// <summary>Opens a journal, and makes a new one only where there is no such file.</summary>
    /// <param name="path">The file; its folder must exist. SQLite keeps two more files beside it (-wal, -shm).</param>
    /// <param name="access">What unlocks it.</param>
    /// <param name="options">Waiting time and limit; the defaults where null.</param>
    /// <returns>The journal, or one line that says what is wrong; a file that is refused is not changed.</returns>
    public static JournalOpening Open(string path, JournalAccess access, JournalOptions? options = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentNullException.ThrowIfNull(access);
        JournalOptions chosen = options ?? new JournalOptions();
        ArgumentOutOfRangeException.ThrowIfLessThan(chosen.BusySeconds, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(chosen.BusySeconds, 60, nameof(options));
        return JournalOpener.Open(Path.GetFullPath(path), access, chosen);
    }

    /// <summary>Whether this device had a journal in a place, whether or not the file is there now: a file that is gone is not a journal that
    /// was never begun.</summary>
    /// <param name="path">The journal's file.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <exception cref="IOException">What the device remembers can't be read.</exception>
    public static bool WasHere(string path, string states) => Place.JournalAt(states, Path.GetFullPath(path)) is not null;

    /// <summary>Whether nobody is set up, so that the device alone opens it.</summary>
    /// <param name="path">A journal.</param>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public static bool OpensWithoutPin(string path)
    {
        try
        {
            using SqliteConnection connection = JournalConnections.Open(path, new JournalOptions(), SqliteOpenMode.ReadWrite);
            return JournalUnlocking.DeviceSuffices(connection);
        }
        catch (SqliteException failure)
        {
            throw new JournalReadException(JournalErrors.From(path, failure), failure);
        }
    }

    /// <inheritdoc/>
    public long Append(ReadOnlyMemory<byte> body) => AppendAll([body]);

    /// <inheritdoc/>
    public long AppendAll(IReadOnlyList<ReadOnlyMemory<byte>> bodies)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        ArgumentOutOfRangeException.ThrowIfZero(bodies.Count, nameof(bodies));
        return Locked(_ => Write(bodies, null), (error, cause) => new JournalWriteException(error, cause));
    }

    /// <inheritdoc/>
    public long AppendLoose(IReadOnlyList<ReadOnlyMemory<byte>> bodies)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        ArgumentOutOfRangeException.ThrowIfZero(bodies.Count, nameof(bodies));
        return Locked(
            connection =>
            {
                JournalConnections.Execute(connection, JournalConnections.WithoutFlush);
                try
                {
                    return Write(bodies, null, flushes: false);
                }
                finally
                {
                    JournalConnections.Execute(connection, JournalConnections.WithFlush);
                }
            },
            (error, cause) => new JournalWriteException(error, cause));
    }

    /// <inheritdoc/>
    public IEnumerable<JournalEntry> ReadFrom(long sequence)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sequence, 1);
        return JournalReading.Entries(_unlocked, sequence);
    }

    /// <summary>The events from a sequence number on, each made into something else by all processors, and given out in order: for reading
    /// many. A snapshot, as with <see cref="ReadFrom(long)"/>.</summary>
    /// <typeparam name="T">What they are made into.</typeparam>
    /// <param name="sequence">The first number wanted, 1 or more.</param>
    /// <param name="make">Safe on several threads at once; what it throws passes through to who reads, in the event's turn.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1.</exception>
    /// <exception cref="JournalReadException">The file can't be read or a number is missing.</exception>
    public IEnumerable<T> ReadFrom<T>(long sequence, Func<JournalEntry, T> make)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sequence, 1);
        ArgumentNullException.ThrowIfNull(make);
        return JournalReading.Entries(_unlocked, sequence, make);
    }

    /// <summary>A view of the journal that was kept, and the number of the last event in it; null where none is kept that fits.</summary>
    /// <param name="path">The view's file.</param>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    public (long Sequence, byte[] Content)? LoadView(string path) =>
        Locked(connection => JournalView.Load(_unlocked, connection, path), (error, cause) => new JournalReadException(error, cause));

    /// <summary>Keeps a view, sealed. It can be made again, so it is no part of the record.</summary>
    /// <param name="path">The view's file.</param>
    /// <param name="sequence">The number of the last event in it.</param>
    /// <param name="content">The view.</param>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    /// <exception cref="IOException">The view can't be written.</exception>
    public void SaveView(string path, long sequence, ReadOnlyMemory<byte> content) => Locked(
        connection =>
        {
            JournalView.Save(_unlocked, connection, path, sequence, content.Span);
            return sequence;
        },
        (error, cause) => new JournalReadException(error, cause));

    /// <summary>The recordings that are kept beside the journal.</summary>
    /// <param name="folder">Where; need not exist while none is kept.</param>
    public RecordingShelf Recordings(string folder) => new(_unlocked, folder);

    /// <summary>The keys of the shifts, under which is sealed what can be read for a time only.</summary>
    /// <param name="folder">Where they lie; need not exist while there is none.</param>
    public ShiftKeys ShiftKeys(string folder) => new(_unlocked, folder);

    /// <summary>Closes the file; SQLite folds its write-ahead log into it.</summary>
    public void Dispose()
    {
        lock (_writing)
        {
            if (_closed)
            {
                return;
            }

            _closed = true;
            if (_epoch != 0 && Flush())
            {
                var (sequence, hash) = Last();
                KeepHead(sequence, hash, toDisk: true);
            }

            _insert.Dispose();
            _connection.Dispose();
            _sealer.Dispose();
            _unlocked.Dispose();
        }
    }

    // What was appended without waiting is brought to the disk before the head that names it.
    private bool Flush()
    {
        try
        {
            if (!_isFlushed)
            {
                JournalConnections.Execute(_connection, "PRAGMA wal_checkpoint(FULL);");
            }

            return true;
        }
        catch (SqliteException failure)
        {
            HeadNotKept = failure.Message.ReplaceLineEndings(" ");
            return false;
        }
    }

    // Without it the head that was kept before stays in force: the next opening is checked against that one. So a full disk loses nothing
    // here, and must not end a program whose events are all saved.
    private void KeepHead(long sequence, byte[] hash, bool toDisk = false)
    {
        try
        {
            KeyringChain chain = _unlocked.Keys.Chain;
            _unlocked.Place?.Saw(sequence, hash, chain.Version, chain.HashOf(chain.Version)!);
            if (toDisk)
            {
                _unlocked.Place?.Flush();
            }

            HeadNotKept = null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            HeadNotKept = failure.Message.ReplaceLineEndings(" ");
        }
    }

    private (long Sequence, byte[] Hash) Last()
    {
        try
        {
            return JournalRows.Last(_connection, _unlocked.Id);
        }
        catch (SqliteException failure)
        {
            HeadNotKept = failure.Message.ReplaceLineEndings(" ");
            return (0, []);
        }
    }

    // What a slot that went held is overwritten in the file (secure_delete); here it goes out of the log too.
    private void Change(ReadOnlyMemory<byte> happened, Func<SqliteConnection, KeysInForce> make) => Locked(
        connection =>
        {
            long last = Write([happened], make);
            JournalConnections.Execute(connection, "PRAGMA wal_checkpoint(TRUNCATE);");
            return last;
        },
        (error, cause) => new JournalWriteException(error, cause));

    private T Locked<T>(Func<SqliteConnection, T> work, Func<JournalError, Exception, Exception> failed)
    {
        lock (_writing)
        {
            try
            {
                return work(_connection);
            }
            catch (SqliteException failure)
            {
                throw failed(JournalErrors.From(_unlocked.Path, failure), failure);
            }
            catch (JournalRemovedException removed)
            {
                throw failed(removed.Error, removed);
            }
        }
    }

    private long Write(IReadOnlyList<ReadOnlyMemory<byte>> bodies, Func<SqliteConnection, KeysInForce>? change, bool flushes = true)
    {
        // Not deferred: the write lock is taken before the last event is read, so that writers take turns.
        using SqliteTransaction transaction = _connection.BeginTransaction(deferred: false);
        _unlocked.Refresh(_connection);
        KeysInForce keys = change?.Invoke(_connection) ?? _unlocked.Keys;
        bool isOther = !ReferenceEquals(keys, _sealer.Keys);
        EventSealer sealer = isOther ? new EventSealer(keys, _unlocked.Id, _unlocked.Device.Id) : _sealer;
        try
        {
            (long last, byte[] hash) = _insert.Last(transaction) ?? (0, EventHeader.Beginning(_unlocked.Id));
            (long device, long epoch) = (_device, isOther ? 0 : _epoch);
            if (epoch == 0)
            {
                device = JournalRows.Device(_connection, _unlocked.Device.PublicKey);
                epoch = JournalRows.AddEpoch(_connection, device, sealer.Epoch);
            }

            foreach (ReadOnlyMemory<byte> body in bodies)
            {
                SealedEvent next = sealer.Seal(epoch, ++last, hash, body.Span);
                _insert.Add(transaction, next);
                hash = next.Hash;
            }

            byte[] signature = _unlocked.Device.Sign(SignedHead.Bytes(_unlocked.Id, last, hash));
            _insert.SetHead(transaction, new JournalHead(device, last, hash, signature));
            transaction.Commit();
            (_device, _epoch) = (device, epoch);
            Use(sealer);
            _isFlushed = flushes;
            if (flushes)
            {
                // Never before what it names is on the disk: a power cut must not leave the head ahead of the file.
                KeepHead(last, hash);
            }

            return last;
        }
        finally
        {
            if (!ReferenceEquals(sealer, _sealer))
            {
                sealer.Dispose();
            }
        }
    }

    private void Use(EventSealer sealer)
    {
        if (!ReferenceEquals(sealer, _sealer))
        {
            _sealer.Dispose();
            _sealer = sealer;
        }

        if (!ReferenceEquals(sealer.Keys, _unlocked.Keys))
        {
            _unlocked.Take(sealer.Keys);
        }
    }
}
