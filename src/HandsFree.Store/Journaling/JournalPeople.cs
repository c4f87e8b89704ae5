using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>The key slots of an open journal: who may unlock it.</summary>
public sealed class JournalPeople
{
    private readonly JournalUnlocked _unlocked;
    private readonly Locking _locked;

    internal JournalPeople(JournalUnlocked unlocked, Locking locked)
    {
        _unlocked = unlocked;
        _locked = locked;
    }

    internal delegate long Locking(Func<SqliteConnection, long> work, Func<JournalError, Exception, Exception> failed);

    /// <summary>Whether anybody is set up; else the device alone unlocks.</summary>
    public bool Any => Read(connection => JournalRows.SlotCount(connection, KeySlotKind.Person)) > 0;

    /// <summary>Whether there is a recovery key.</summary>
    public bool HasRecovery => Read(connection => JournalRows.SlotCount(connection, KeySlotKind.Recovery)) > 0;

    /// <summary>Whether this person can unlock.</summary>
    public bool Has(string person) =>
        Read(connection => JournalRows.Slot(connection, PersonId(person)) is null ? 0 : 1) > 0;

    /// <summary>Whether a PIN is the person's. A wrong one is counted and makes wait as one that opens the journal.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public PersonCheck Check(string person, Pin pin)
    {
        Credential.Person credential = new(person, pin);
        return Check(person, () =>
        {
            KeySlot? slot = null;
            Read(connection =>
            {
                slot = JournalRows.Slot(connection, PersonId(person));
                return 0;
            });
            if (slot is null || Wrap.Unwrap(slot, credential) is not var (key, _))
            {
                return false;
            }

            key.Dispose();
            return true;
        });
    }

    /// <summary>Whether somebody is the person by something else that only she knows; counted together with her PIN.</summary>
    /// <param name="person">Who.</param>
    /// <param name="isRight">Tells; not asked while a wait lasts.</param>
    public PersonCheck Check(string person, Func<bool> isRight)
    {
        ArgumentNullException.ThrowIfNull(isRight);
        Lockout lockout = new(_unlocked.Device.LockoutFile, _unlocked.Time);
        byte[] id = PersonId(person);
        if (lockout.Remaining(id) is { } left && left > TimeSpan.Zero)
        {
            return new PersonCheck(false, left);
        }

        if (!isRight())
        {
            return new PersonCheck(false, lockout.Wrong(id));
        }

        lockout.Right(id);
        return new PersonCheck(true, TimeSpan.Zero);
    }

    /// <summary>Lets a person unlock, or gives her another PIN or role. With the first person the device alone unlocks no more.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public void Set(string person, Pin pin, Role role)
    {
        KeySlot slot = Wrap.Wrap(_unlocked.Key, new Credential.Person(person, pin), role);
        Write(connection =>
        {
            JournalRows.SetSlot(connection, slot);
            JournalRows.RemoveSlot(connection, Wrap.Id(new Credential.Device()));
        });
    }

    /// <summary>Lets a person unlock no more.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public void Remove(string person) => Write(connection => JournalRows.RemoveSlot(connection, PersonId(person)));

    /// <summary>Makes a recovery key; one made before unlocks no more.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public RecoveryKey MakeRecovery()
    {
        RecoveryKey key = RecoveryKey.New();
        KeySlot slot = Wrap.Wrap(_unlocked.Key, new Credential.Recovery(key), Role.Supervisor);
        Write(connection => JournalRows.SetSlot(connection, slot));
        return key;
    }

    private KeyWrap Wrap => new(_unlocked.Id, _unlocked.Device.Secret);

    private byte[] PersonId(string person) => Wrap.PersonId(person);

    private long Read(Func<SqliteConnection, long> work) => _locked(work, (error, cause) => new JournalReadException(error, cause));

    private void Write(Action<SqliteConnection> work) => _locked(
        connection =>
        {
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            work(connection);
            transaction.Commit();
            return 0;
        },
        (error, cause) => new JournalWriteException(error, cause));
}
