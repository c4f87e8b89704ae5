using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 1: a PIN can't be gone around by the slot that the device alone opened before anybody was set up.</summary>
public sealed class DeviceSlotTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().Begun();

    public void Dispose() => home.Dispose();

    [Fact]
    public void The_slot_of_the_device_put_back_as_a_row_opens_nothing_and_is_named()
    {
        (byte[] id, byte[] salt, byte[] content) = Slot();
        SetUp();

        home.Force("INSERT INTO key_slot VALUES ($id, 0, $salt, $sealed);", null, ("$id", id), ("$salt", salt), ("$sealed", content));

        home.Refused(new Credential.Device()).Problem.ShouldBe(JournalProblem.NeedsPin);
        home.Findings().ShouldBe(["1 of the keys were put in or changed by somebody else"]);
        home.Texts(AttackedHome.Ann).ShouldBe(["pulse 72", "ann was set up"]);
    }

    [Fact]
    public void The_list_of_people_taken_out_and_the_slot_put_back_opens_nothing()
    {
        (byte[] id, byte[] salt, byte[] content) = Slot();
        SetUp();

        home.Force("DELETE FROM keyring; DELETE FROM key_slot; INSERT INTO key_slot VALUES ($id, 0, $salt, $sealed);", null, ("$id", id), ("$salt", salt), ("$sealed", content));

        home.Refused(new Credential.Device()).Message.ShouldContain("the list of who may open");
        home.Refused(new Credential.Device(), accepts: true).Problem.ShouldBe(JournalProblem.OtherDevice);
        home.Findings().ShouldNotBeEmpty();
    }

    [Fact]
    public void No_byte_of_the_slot_is_left_in_the_file_its_log_or_a_copy_that_is_made_now()
    {
        byte[] content = Slot().Sealed;
        using (Journal journal = home.Open(new Credential.Device()))
        {
            journal.People.Set("ann", AttackedHome.Ann.Pin, Role.Supervisor, "ann was set up"u8.ToArray());
            Carved(content).ShouldBeEmpty();
        }

        home.Backup("after.backup");

        Carved(content).ShouldBeEmpty();
    }

    [Fact]
    public void A_copy_from_before_the_first_person_is_opened_by_nobody_on_this_device()
    {
        string before = home.Backup("before.backup");
        SetUp();
        string elsewhere = Path.Combine(home.Folder, "elsewhere.journal");

        home.Restore(before, new Credential.Device(), elsewhere).Error!.Problem.ShouldBe(JournalProblem.OtherDevice);
        File.Copy(before, home.Path, overwrite: true);
        home.Refused(new Credential.Device()).Problem.ShouldBe(JournalProblem.KeysAltered);
        home.Refused(new Credential.Device(), accepts: true).Problem.ShouldBe(JournalProblem.OtherDevice);
    }

    private void SetUp()
    {
        using Journal journal = home.Open(new Credential.Device());
        journal.People.Set("ann", AttackedHome.Ann.Pin, Role.Supervisor, "ann was set up"u8.ToArray());
    }

    private (byte[] Id, byte[] Salt, byte[] Sealed) Slot()
    {
        using SqliteConnection connection = home.Sql();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT id, salt, sealed FROM key_slot;";
        using SqliteDataReader reader = command.ExecuteReader();
        reader.Read().ShouldBeTrue();
        return (reader.GetFieldValue<byte[]>(0), reader.GetFieldValue<byte[]>(1), reader.GetFieldValue<byte[]>(2));
    }

    private string[] Carved(byte[] bytes) =>
    [
        .. Directory.GetFiles(home.Folder, "*", SearchOption.AllDirectories).Where(file =>
        {
            using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            byte[] content = new byte[stream.Length];
            stream.ReadExactly(content);
            return content.AsSpan().IndexOf(bytes) >= 0;
        }),
    ];
}
