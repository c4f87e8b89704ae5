using System.Security.Cryptography;
using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 3: a backup that was cut short is not one.</summary>
public sealed class TruncatedBackupTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().WithPeople().Home;
    private readonly string backup;

    public TruncatedBackupTests()
    {
        home.Append(AttackedHome.Bea, "212/72 and its report");
        backup = home.Backup("backup");
    }

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_backup_without_its_last_event_is_refused()
    {
        home.Force("DELETE FROM event WHERE sequence = 6;", backup);
        RestoreTriggers();

        Restored().ShouldContain("events 6 to 6 are missing at the end");
    }

    [Fact]
    public void A_backup_cut_short_and_signed_with_a_fresh_key_is_refused()
    {
        using ECDsa fresh = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        byte[] id, hash;
        using (SqliteConnection connection = home.Sql(backup))
        {
            id = JournalRows.Id(connection);
            hash = JournalRows.Hash(connection, id, 5)!;
        }

        home.Force(
            "DELETE FROM event WHERE sequence = 6; INSERT INTO device (number, public_key) VALUES (99, $key); UPDATE head SET device = 99, sequence = 5, hash = $hash, signature = $signature;",
            backup,
            ("$key", fresh.ExportSubjectPublicKeyInfo()), ("$hash", hash),
            ("$signature", fresh.SignData(SignedHead.Bytes(id, 5, hash), HashAlgorithmName.SHA256)));
        RestoreTriggers();

        Restored().ShouldBe(["written by a device that nobody has let in"]);
    }

    // The device's own key lies in a file of this user: who uses it makes a backup that is whole in itself. What was cut off stands in
    // what is restored, because this device has seen it.
    [Fact]
    public void A_backup_cut_short_and_signed_with_the_device_s_own_key_says_what_is_lost()
    {
        using (SqliteConnection connection = home.Sql(backup))
        {
            byte[] id = JournalRows.Id(connection);
            byte[] hash = JournalRows.Hash(connection, id, 5)!;
            using DeviceState device = DeviceState.Open(home.States, id, hasPeople: true);
            home.Force(
                "DELETE FROM event WHERE sequence = 6; UPDATE head SET sequence = 5, hash = $hash, signature = $signature;",
                backup, ("$hash", hash), ("$signature", device.Sign(SignedHead.Bytes(id, 5, hash))));
        }

        RestoreTriggers();
        File.Delete(home.Path);

        home.Restore(backup, AttackedHome.Ann).Error.ShouldBeNull();
        home.Texts(AttackedHome.Ann)[^1].ShouldBe("restored 5, lost 1");
    }

    private IReadOnlyList<string> Restored()
    {
        File.Delete(home.Path);
        (JournalVerdict? verdict, JournalError? error) = home.Restore(backup, AttackedHome.Ann);
        error.ShouldBeNull();
        File.Exists(home.Path).ShouldBeFalse();
        return verdict!.Findings;
    }

    // So that not the missing guards give it away.
    private void RestoreTriggers()
    {
        using SqliteConnection connection = home.Sql(backup);
        foreach (string statement in JournalSchema.Create.Split("CREATE TRIGGER ")[1..].Where(s => s.Contains("never", StringComparison.Ordinal)))
        {
            using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "CREATE TRIGGER IF NOT EXISTS " + statement;
            command.ExecuteNonQuery();
        }

        using SqliteConnection model = new("Data Source=:memory:");
        model.Open();
        JournalConnections.Execute(model, JournalSchema.Create);
        using SqliteCommand fix = connection.CreateCommand();
        fix.CommandText = "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = REPLACE(sql, 'IF NOT EXISTS ', ''); PRAGMA writable_schema = OFF;";
        fix.ExecuteNonQuery();
        JournalRows.Schema(connection).ShouldBe(JournalRows.Schema(model));
    }
}
