using HandsFree.Core.People;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Makes the next keyring of a journal, within the transaction that also writes what happened.</summary>
internal sealed class KeyringChange
{
    private readonly SqliteConnection connection;
    private readonly JournalUnlocked unlocked;
    private readonly KeysInForce keys;
    private readonly KeyWrap wrap;
    private readonly List<Member> members;
    private readonly List<byte[]> devices;
    private readonly Dictionary<int, string> names;
    private HolderKeys? signer;
    private bool removes;

    public KeyringChange(SqliteConnection connection, JournalUnlocked unlocked, KeyWrap wrap)
    {
        (this.connection, this.unlocked, this.wrap) = (connection, unlocked, wrap);
        keys = unlocked.Keys;
        signer = keys.HolderKeys;
        members = [.. keys.Chain.Current?.Members ?? []];
        devices = [.. keys.Chain.Current?.Devices ?? []];
        names = members.ToDictionary(member => member.Number, member => keys.Names[member.Number]);
    }

    /// <summary>Takes a holder in; who has the same slot or the same id is removed.</summary>
    public void Add(Credential credential, KeySlotKind kind, Role role, string name)
    {
        foreach (Member other in members.Where(member => member.Kind == kind && names[member.Number] == name).ToArray())
        {
            Remove(other);
        }

        HolderKeys holder = HolderKeys.New(Math.Max(keys.Chain.HighestNumber, members.Select(m => m.Number).DefaultIfEmpty(0).Max()) + 1, name);
        signer ??= holder;
        KeySlot slot = wrap.Wrap(holder.ForSlot(keys.Chain.Founder ?? signer.AsFounder), credential);
        JournalRows.SetSlot(connection, slot);
        members.Add(holder.Member(kind, role, slot.Hash, []));
        names[holder.Number] = name;
        if (signer != holder)
        {
            holder.Dispose();
        }
    }

    /// <summary>Takes out all members of a kind.</summary>
    public void RemoveAll(KeySlotKind kind)
    {
        foreach (Member member in members.Where(member => member.Kind == kind).ToArray())
        {
            Remove(member);
        }
    }

    /// <summary>Takes out a person.</summary>
    public void Remove(string person)
    {
        foreach (Member member in members.Where(member => member.Kind == KeySlotKind.Person && names[member.Number] == person).ToArray())
        {
            Remove(member);
        }
    }

    /// <summary>A device may write.</summary>
    public void Allow(byte[] device)
    {
        if (!devices.Any(known => known.AsSpan().SequenceEqual(device)))
        {
            devices.Add(device);
        }
    }

    /// <summary>Writes the keyring, signed, with a new data key for the first person and after a removal; the keys from here on.</summary>
    public KeysInForce Write()
    {
        Keyring? before = keys.Chain.Current;
        bool begins = before is null || removes;
        int generation = keys.Data.Generation + (begins ? 1 : 0);
        using DataKey key = begins ? DataKey.New() : new DataKey(keys.Data.Current.Bytes);
        if (before is null)
        {
            JournalRows.RemoveSlot(connection, wrap.Id(new Credential.Device()));
        }

        return Written(new Keyring(
            keys.Chain.Version + 1,
            keys.Chain.HashOf(keys.Chain.Version)!,
            generation,
            begins ? OlderKey.Seal(keys.Data.Current, key, unlocked.Id, generation) : null,
            [.. members.Select(member => member with { Box = KeyBox.Seal(key, member.Agrees, unlocked.Id, member.Number, generation) })],
            devices,
            SealedNames.Seal(names, key, unlocked.Id)));
    }

    /// <summary>Another PIN of who opened the journal: her slot alone is another.</summary>
    public KeysInForce WriteOwnPin(Credential.Person own)
    {
        HolderKeys holder = keys.HolderKeys!;
        KeySlot slot = wrap.Wrap(holder.ForSlot(keys.Chain.Founder!), own);
        JournalRows.SetSlot(connection, slot);
        Keyring before = keys.Chain.Current!;
        return Written(before with
        {
            Version = before.Version + 1,
            Before = keys.Chain.HashOf(before.Version)!,
            Older = null,
            Members = [.. before.Members.Select(member => member.Number == holder.Number ? member with { Slot = slot.Hash } : member)],
        });
    }

    private KeysInForce Written(Keyring next)
    {
        byte[] body = next.Bytes();
        JournalRows.AddKeyring(connection, new KeyringRow(next.Version, body, signer!.Number, signer.Sign(Keyring.Signed(unlocked.Id, body))));

        // Read back and checked as whoever opens the journal will check it.
        (KeyringChain? chain, string? wrong) = KeyringChain.Read(JournalRows.Keyrings(connection), unlocked.Id);
        return chain is null
            ? throw new InvalidOperationException(wrong)
            : KeysInForce.Of(chain, signer, unlocked.Id) ?? throw new InvalidOperationException("who changes the list of who may open stays in it");
    }

    private void Remove(Member member)
    {
        members.Remove(member);
        names.Remove(member.Number);
        removes = true;
        foreach (KeySlot slot in JournalRows.Slots(connection).Where(slot => slot.Hash.AsSpan().SequenceEqual(member.Slot)))
        {
            JournalRows.RemoveSlot(connection, slot.Id);
        }
    }
}
