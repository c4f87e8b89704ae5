using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 2: removed means removed.</summary>
public sealed class RemovedPersonTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().WithPeople().Home;

    public void Dispose() => home.Dispose();

    [Fact]
    public void The_slot_of_a_removed_aide_put_back_opens_nothing_and_is_named()
    {
        KeySlot slot = SlotOfBea();
        Remove();

        home.Force(
            "INSERT INTO key_slot VALUES ($id, 1, $salt, $sealed);", null, ("$id", slot.Id), ("$salt", slot.Salt), ("$sealed", slot.Sealed));

        home.Refused(AttackedHome.Bea).Problem.ShouldBe(JournalProblem.WrongPin);
        home.Findings().ShouldBe(["1 of the keys were put in or changed by somebody else"]);
    }

    [Fact]
    public void Her_slot_and_the_list_that_had_her_put_back_open_nothing()
    {
        KeySlot slot = SlotOfBea();
        Remove();

        home.Force(
            "DELETE FROM keyring WHERE version = (SELECT MAX(version) FROM keyring); INSERT INTO key_slot VALUES ($id, 1, $salt, $sealed);",
            null, ("$id", slot.Id), ("$salt", slot.Salt), ("$sealed", slot.Sealed));

        home.Refused(AttackedHome.Bea).Problem.ShouldBe(JournalProblem.KeysAltered);
        home.Findings().ShouldNotBeEmpty();
    }

    [Fact]
    public void A_session_that_she_has_open_writes_and_reads_no_more()
    {
        using Journal hers = home.Open(AttackedHome.Bea);
        hers.Append("before"u8.ToArray());
        Remove();

        Should.Throw<JournalWriteException>(() => hers.Append("after"u8.ToArray())).Problem.ShouldBe(JournalProblem.Removed);
        Should.Throw<JournalReadException>(() => hers.ReadFrom(1).ToList()).Problem.ShouldBe(JournalProblem.Removed);
        home.Texts(AttackedHome.Ann)[^2..].ShouldBe(["before", "bea went"]);
    }

    // She knows the data key of her time, the device's files and the source: she seals, signs and chains an event as it was done in her time.
    [Fact]
    public void An_event_that_she_seals_with_the_data_key_of_her_time_is_not_believed()
    {
        byte[] id = [];
        KeysInForce? hers = null;
        using (SqliteConnection connection = home.Sql())
        {
            id = JournalRows.Id(connection);
            using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
            hers = JournalUnlocking.Unlock(home.Path, connection, id, device, null, home.Access(AttackedHome.Bea)).Keys;
        }

        Remove();
        using (SqliteConnection connection = home.Sql())
        using (DeviceState device = DeviceState.Open(home.States, id, hasPeople: true))
        using (EventSealer sealer = new(hers!, id, device.Id))
        {
            (long last, byte[] hash) = JournalRows.Last(connection, id);
            long number = JournalRows.Device(connection, device.PublicKey);
            SealedEvent forged = sealer.Seal(JournalRows.AddEpoch(connection, number, sealer.Epoch), last + 1, hash, "pulse 40"u8);
            using SqliteTransaction transaction = connection.BeginTransaction();
            using JournalInsert insert = new(connection);
            insert.Add(transaction, forged);
            insert.SetHead(transaction, new JournalHead(number, last + 1, forged.Hash, device.Sign(SignedHead.Bytes(id, last + 1, forged.Hash))));
            transaction.Commit();
        }

        home.Findings().ShouldContain("event 7 was not written under the keys that were in force");
        using Journal journal = home.Open(AttackedHome.Ann);
        Should.Throw<JournalReadException>(() => journal.ReadFrom(1).ToList()).Message.ShouldContain("event 7 is not as it was written");
        hers!.Dispose();
    }

    [Fact]
    public void The_data_key_changes_when_somebody_is_removed_and_who_stays_reads_all()
    {
        Remove();
        home.Append(AttackedHome.Nell, "after she went");

        home.Texts(AttackedHome.Nell)[^3..].ShouldBe(["recovery key", "bea went", "after she went"]);
        using SqliteConnection connection = home.Sql();
        KeyringChain.Read(JournalRows.Keyrings(connection), JournalRows.Id(connection)).Chain!.All.Select(keyring => keyring.Generation)
            .ShouldBe([2, 2, 2, 2, 3]);
    }

    private void Remove()
    {
        using Journal journal = home.Open(AttackedHome.Ann);
        journal.People.Remove("bea", "bea went"u8.ToArray());
    }

    private KeySlot SlotOfBea()
    {
        using SqliteConnection connection = home.Sql();
        byte[] id = JournalRows.Id(connection);
        using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
        return JournalRows.Slot(connection, new KeyWrap(id, device.Secret).PersonId("bea"))!;
    }
}
