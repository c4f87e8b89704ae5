using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Who may unlock an open journal. Each change is one piece with the event that tells of it: both are written, or neither.</summary>
public sealed class JournalPeople
{
    /// <summary>How the recovery key is called where a person is named.</summary>
    public const string RecoveryName = "recovery-key";

    /// <summary>How the emergency key is called where a person is named.</summary>
    public const string EmergencyName = "emergency-key";

    private readonly JournalUnlocked unlocked;
    private readonly Changing change;

    internal JournalPeople(JournalUnlocked unlocked, Changing change) => (this.unlocked, this.change) = (unlocked, change);

    internal delegate void Changing(ReadOnlyMemory<byte> happened, Func<SqliteConnection, KeysInForce> make);

    /// <summary>Whether anybody is set up; else the device alone unlocks.</summary>
    public bool Any => unlocked.Keys.Chain.Version > 0;

    /// <summary>Whether there is a recovery key.</summary>
    public bool HasRecovery => Has(KeySlotKind.Recovery);

    /// <summary>Whether there is an emergency key.</summary>
    public bool HasEmergency => Has(KeySlotKind.Emergency);

    /// <summary>Everybody who may unlock, with her role.</summary>
    public IReadOnlyList<Holder> All => Named(unlocked.Keys);

    /// <summary>Whether this person can unlock.</summary>
    public bool Has(string person) => All.Any(holder => holder.Person == person);

    /// <summary>Whether a PIN is the person's. A wrong one is counted and makes wait as one that opens the journal.</summary>
    /// <exception cref="IOException">The count can't be written.</exception>
    public PersonCheck Check(string person, Pin pin) => Check(person, () =>
    {
        Credential.Person credential = new(person, pin);
        KeySlot? slot = SlotOf(person);
        return slot is not null && unlocked.Keys.Chain.Current!.BySlot(slot) is not null && Wrap.Unwrap(slot, credential) is not null;
    });

    /// <summary>Whether somebody is the person by something else that only she knows; counted together with her PIN.</summary>
    /// <param name="person">Who.</param>
    /// <param name="isRight">Tells; not asked while a wait lasts.</param>
    /// <exception cref="IOException">The count can't be written.</exception>
    public PersonCheck Check(string person, Func<bool> isRight)
    {
        ArgumentNullException.ThrowIfNull(isRight);
        TryResult result = unlocked.Lockout.Try(Wrap.PersonId(person), person, "PIN of a locked session", closes: true, notes: false, isRight);
        return new PersonCheck(result.IsRight, result.IsClosed ? TimeSpan.FromHours(1) : result.Wait);
    }

    /// <summary>Lets a person unlock, or gives her another PIN or role. With the first person the device alone unlocks no more. Her own new PIN
    /// leaves her keys; a PIN that somebody else gives her comes with new ones.</summary>
    /// <param name="person">Her id.</param>
    /// <param name="pin">PIN or passphrase.</param>
    /// <param name="role">What she may do.</param>
    /// <param name="happened">The event that tells of it.</param>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    /// <exception cref="ArgumentException">The PIN is too weak for the role; the message says why.</exception>
    public void Set(string person, Pin pin, Role role, ReadOnlyMemory<byte> happened)
    {
        ArgumentNullException.ThrowIfNull(pin);
        if (pin.WhyTooWeak(person, role) is { } weak)
        {
            throw new ArgumentException(weak, nameof(pin));
        }

        if (!Any)
        {
            if (role != Role.Supervisor)
            {
                throw new ArgumentException("the first person is a supervisor", nameof(role));
            }

            SetFirst(person, pin, happened);
            return;
        }

        bool isOwn = unlocked.Holder is { } holder && holder.Person == person && holder.Role == role
            && unlocked.Keys.Chain.Current!.ByNumber(unlocked.Keys.HolderKeys!.Number)!.Kind == KeySlotKind.Person;
        Credential.Person credential = new(person, pin);
        change(happened, connection =>
        {
            KeyringChange next = new(connection, unlocked, Wrap);
            if (isOwn)
            {
                return next.WriteOwnPin(credential);
            }

            next.Add(credential, KeySlotKind.Person, role, person);
            return next.Write();
        });
        unlocked.Lockout.Forget(Wrap.PersonId(person));
    }

    /// <summary>Lets a person unlock no more, from the next event on.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public void Remove(string person, ReadOnlyMemory<byte> happened) => change(happened, connection =>
    {
        KeyringChange next = new(connection, unlocked, Wrap);
        next.Remove(person);
        return next.Write();
    });

    /// <summary>Another device takes the journal over: it may write, and one supervisor has a PIN here; the PINs of the device before are gone.</summary>
    internal void Adopt(Credential.Person supervisor, ReadOnlyMemory<byte> happened) => change(happened, connection =>
    {
        KeyringChange next = new(connection, unlocked, Wrap);
        next.RemoveAll(KeySlotKind.Person);
        next.Allow(unlocked.Device.PublicKey);
        next.Add(supervisor, KeySlotKind.Person, Role.Supervisor, supervisor.Id);
        return next.Write();
    });

    /// <summary>Makes a recovery key; one made before unlocks no more.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public RecoveryKey MakeRecovery(ReadOnlyMemory<byte> happened) =>
        OnPaper(key => new Credential.Recovery(key), KeySlotKind.Recovery, Role.Supervisor, RecoveryName, happened);

    /// <summary>Makes an emergency key, which opens the journal for a nurse's work; one made before unlocks no more.</summary>
    /// <exception cref="JournalWriteException">Nothing was changed.</exception>
    public RecoveryKey MakeEmergency(ReadOnlyMemory<byte> happened) =>
        OnPaper(key => new Credential.Emergency(key), KeySlotKind.Emergency, Role.Nurse, EmergencyName, happened);

    /// <summary>Gives out what happened while nobody could write it into the journal: openings that failed.</summary>
    /// <param name="write">Writes events of them; what it throws leaves them for the next time.</param>
    /// <exception cref="IOException">The count can't be read or written.</exception>
    public void TakeFailedOpenings(Action<IReadOnlyList<FailedOpening>> write) => unlocked.Lockout.TakeFailed(write);

    private KeyWrap Wrap => new(unlocked.Id, unlocked.Device.Secret);

    private static IReadOnlyList<Holder> Named(KeysInForce keys) =>
    [
        .. (keys.Chain.Current?.Members ?? []).Where(member => member.Kind == KeySlotKind.Person)
            .Select(member => new Holder(keys.Names[member.Number], member.Role)),
    ];

    private bool Has(KeySlotKind kind) => unlocked.Keys.Chain.Current?.Members.Any(member => member.Kind == kind) == true;

    private KeySlot? SlotOf(string person)
    {
        using SqliteConnection connection = JournalConnections.Open(unlocked.Path, unlocked.Options, SqliteOpenMode.ReadWrite);
        return JournalRows.Slot(connection, Wrap.PersonId(person));
    }

    private void SetFirst(string person, Pin pin, ReadOnlyMemory<byte> happened)
    {
        byte[] secret = unlocked.Device.PrepareRenewal();
        change(happened, connection =>
        {
            KeyringChange next = new(connection, unlocked, new KeyWrap(unlocked.Id, secret));
            next.Allow(unlocked.Device.PublicKey);
            next.Add(new Credential.Person(person, pin), KeySlotKind.Person, Role.Supervisor, person);
            return next.Write();
        });
        unlocked.Device.Renew(secret, unlocked.Time);
        using SqliteConnection connection = JournalConnections.Open(unlocked.Path, unlocked.Options, SqliteOpenMode.ReadWrite);
        unlocked.Place?.Dispose();
        unlocked.Place = JournalPlace.Make(unlocked.States, unlocked.Path, unlocked.Id, unlocked.Device, connection, unlocked.Keys.Chain);
    }

    private RecoveryKey OnPaper(Func<RecoveryKey, Credential> credential, KeySlotKind kind, Role role, string name, ReadOnlyMemory<byte> happened)
    {
        RecoveryKey key = RecoveryKey.New();
        change(happened, connection =>
        {
            KeyringChange next = new(connection, unlocked, Wrap);
            next.Add(credential(key), kind, role, name);
            return next.Write();
        });
        return key;
    }
}
