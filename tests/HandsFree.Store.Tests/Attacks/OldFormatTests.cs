using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;
using Shouldly;
using Xunit;
using HandsFree.Store.Tests.Journaling;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 4: no way in through an old format.</summary>
public sealed class OldFormatTests : IDisposable
{
    private readonly AttackedHome home = new();

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_journal_of_an_older_format_is_refused_with_one_line_and_not_changed(int version)
    {
        using (SqliteConnection connection = home.Sql())
        {
            connection.Run($"""
                PRAGMA application_id = {0x48464A31};
                PRAGMA user_version = {version};
                CREATE TABLE event (sequence INTEGER PRIMARY KEY, body BLOB NOT NULL) STRICT;
                INSERT INTO event VALUES (1, CAST('an acknowledgement of nurse-1, in plain words' AS BLOB));
                """);
        }

        byte[] before = File.ReadAllBytes(home.Path);

        JournalError error = home.Refused(new Credential.Device());

        error.Problem.ShouldBe(JournalProblem.OlderVersion);
        error.Message.ShouldBe($"journal {home.Path}: of format {version}, which this program does not open; move the file away and begin a new one (format 3)");
        JournalVerification.Verify(home.Path, home.States).Error!.Problem.ShouldBe(JournalProblem.OlderVersion);
        File.ReadAllBytes(home.Path).ShouldBe(before);
    }
}
