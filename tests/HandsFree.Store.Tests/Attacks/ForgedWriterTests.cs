using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 7: whoever has the data key can't write in another's name.</summary>
public sealed class ForgedWriterTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().WithPeople().Home;

    public void Dispose() => home.Dispose();

    [Fact]
    public void Who_writes_an_event_has_signed_it()
    {
        home.Append(AttackedHome.Nell, "acknowledged");

        using Journal journal = home.Open(AttackedHome.Bea);
        JournalEntry entry = journal.ReadFrom(6).Single();
        entry.Writer!.Holder.ShouldBe(new Holder("nell", Role.Nurse));
        entry.Writer.HasSigned().ShouldBeTrue();
    }

    // Bea the aide seals with the data key that she has, names Nell the nurse as the writer, and signs with her own key, the only one she has.
    [Fact]
    public void An_event_that_an_aide_writes_as_a_nurse_is_not_signed_by_the_nurse_and_is_found()
    {
        Forge(signed: keys => keys.HolderKeys!);

        home.Findings().ShouldBe(["event 6 is not signed by who it says"]);
        using Journal journal = home.Open(AttackedHome.Ann);
        JournalEntry entry = journal.ReadFrom(6).Single();
        entry.Writer!.Holder.Person.ShouldBe("nell");
        entry.Writer.HasSigned().ShouldBeFalse();
    }

    [Fact]
    public void A_nurse_s_signature_copied_from_another_event_does_not_fit()
    {
        home.Append(AttackedHome.Nell, "acknowledged");
        Forge(signed: null);
        home.Force("UPDATE event SET signature = (SELECT signature FROM event WHERE sequence = 6) WHERE sequence = 7;");

        home.Findings().ShouldContain("event 7 is not signed by who it says");
        using Journal journal = home.Open(AttackedHome.Ann);
        journal.ReadFrom(7).Single().Writer!.HasSigned().ShouldBeFalse();
    }

    [Fact]
    public void An_aide_who_makes_herself_a_supervisor_is_refused()
    {
        using (SqliteConnection connection = home.Sql())
        {
            byte[] id = JournalRows.Id(connection);
            using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
            using KeysInForce keys = Keys(connection, id, device);
            Keyring before = keys.Chain.Current!;
            Keyring forged = before with
            {
                Version = before.Version + 1,
                Before = keys.Chain.HashOf(before.Version)!,
                Older = null,
                Members = [.. before.Members.Select(m => m.Number == keys.HolderKeys!.Number ? m with { Role = Role.Supervisor } : m)],
            };
            byte[] body = forged.Bytes();
            JournalRows.AddKeyring(connection, new KeyringRow(forged.Version, body, keys.HolderKeys!.Number, keys.HolderKeys.Sign(Keyring.Signed(id, body))));
        }

        home.Refused(AttackedHome.Bea).Message.ShouldContain("the list of who may open, 5, is signed by somebody who may not change it");
        home.Findings().ShouldHaveSingleItem().ShouldContain("may not change it");
    }

    // She makes a journal of her own with the same id, in which she is the supervisor, and copies everybody's slots into it.
    [Fact]
    public void A_journal_in_which_an_aide_founded_the_list_herself_is_opened_by_nobody_else()
    {
        using (SqliteConnection connection = home.Sql())
        {
            byte[] id = JournalRows.Id(connection);
            using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
            using KeysInForce keys = Keys(connection, id, device);
            KeyWrap wrap = new(id, device.Secret);
            using HolderKeys founder = HolderKeys.New(99, "bea");
            using DataKey key = DataKey.New();
            KeySlot slot = wrap.Wrap(founder.ForSlot(founder.AsFounder), AttackedHome.Bea);
            Keyring forged = new(
                1, Keyring.None(id), 2, OlderKey.Seal(keys.Data.Of(1)!, key, id, 2),
                [
                    .. keys.Chain.Current!.Members.Where(m => m.Number != keys.HolderKeys!.Number).Select(m => m with { Box = KeyBox.Seal(key, m.Agrees, id, m.Number, 2) }),
                    founder.Member(KeySlotKind.Person, Role.Supervisor, slot.Hash, KeyBox.Seal(key, founder.PublicAgreement, id, 99, 2)),
                ],
                [device.PublicKey],
                SealedNames.Seal(new Dictionary<int, string> { [1] = "ann", [2] = "nell", [4] = "recovery-key", [99] = "bea" }, key, id));
            byte[] body = forged.Bytes();
            home.Force("DELETE FROM keyring; DELETE FROM event WHERE keyring > 0;");
            JournalRows.AddKeyring(connection, new KeyringRow(1, body, 99, founder.Sign(Keyring.Signed(id, body))));
            JournalRows.SetSlot(connection, slot);
            home.Force("UPDATE head SET sequence = 1, hash = $hash, signature = $signature;", null,
                ("$hash", JournalRows.Hash(connection, id, 1)!), ("$signature", device.Sign(SignedHead.Bytes(id, 1, JournalRows.Hash(connection, id, 1)!))));
        }

        File.Delete(home.PlaceFile());

        home.Refused(AttackedHome.Ann, accepts: true).Problem.ShouldBe(JournalProblem.WrongPin);
        home.Refused(AttackedHome.Nell, accepts: true).Problem.ShouldBe(JournalProblem.WrongPin);
    }

    [Fact]
    public void A_view_that_an_aide_made_is_not_believed_by_a_nurse()
    {
        string view = Path.Combine(home.Folder, "view");
        using (Journal bea = home.Open(AttackedHome.Bea))
        {
            bea.SaveView(view, 5, "no open reports"u8.ToArray());
            bea.LoadView(view).ShouldNotBeNull();
        }

        File.Move(view + ".aide", view + ".nurse");

        using Journal nell = home.Open(AttackedHome.Nell);
        nell.LoadView(view).ShouldBeNull();
    }

    private KeysInForce Keys(SqliteConnection connection, byte[] id, DeviceState device) =>
        JournalUnlocking.Unlock(home.Path, connection, id, device, null, home.Access(AttackedHome.Bea)).Keys.ShouldNotBeNull();

    private void Forge(Func<KeysInForce, HolderKeys>? signed)
    {
        using SqliteConnection connection = home.Sql();
        byte[] id = JournalRows.Id(connection);
        using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
        using KeysInForce keys = Keys(connection, id, device);
        int nell = keys.Names.Single(name => name.Value == "nell").Key;
        (long last, byte[] previous) = JournalRows.Last(connection, id);
        long number = JournalRows.Device(connection, device.PublicKey);
        Epoch epoch = new(device.Id, new byte[32], keys.Data.Generation);
        using EventCipher cipher = new(keys.Data.Current, id, epoch);
        byte[] header = new byte[EventHeader.Size];
        EventHeader.Write(header, epoch, last + 1, 1, keys.Chain.HashOf(keys.Chain.Version), nell, previous);
        byte[] body = cipher.Seal(1, header, "acknowledged"u8);
        byte[] hash = EventHeader.Hash(header, body);
        byte[] signature = signed?.Invoke(keys).Sign(SealedEvent.Signed(id, hash)) ?? [];
        using SqliteTransaction transaction = connection.BeginTransaction();
        using JournalInsert insert = new(connection);
        insert.Add(transaction, new SealedEvent(last + 1, JournalRows.AddEpoch(connection, number, epoch), 1, keys.Chain.Version, nell, body, hash, signature));
        insert.SetHead(transaction, new JournalHead(number, last + 1, hash, device.Sign(SignedHead.Bytes(id, last + 1, hash))));
        transaction.Commit();
    }
}
