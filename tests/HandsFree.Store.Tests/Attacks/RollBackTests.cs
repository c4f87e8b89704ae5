using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 3: nobody rolls back.</summary>
public sealed class RollBackTests : IDisposable
{
    private readonly AttackedHome home;
    private readonly RecoveryKey paper;

    public RollBackTests() => (home, paper) = new AttackedHome().WithPeople();

    public void Dispose() => home.Dispose();

    [Fact]
    public void An_aide_can_not_delete_the_journal_and_restore_an_old_backup()
    {
        string old = home.Backup("old");
        home.Append(AttackedHome.Bea, "212/72 and its report");
        File.Delete(home.Path);

        home.Restore(old, AttackedHome.Bea).Error!.Message.ShouldContain("only a supervisor or the recovery key restores a backup");
        home.Restore(old, new Credential.Device()).Error!.Problem.ShouldBe(JournalProblem.NeedsPin);
        File.Exists(home.Path).ShouldBeFalse();
    }

    [Fact]
    public void A_supervisor_who_restores_an_old_backup_writes_into_it_what_is_lost()
    {
        string old = home.Backup("old");
        home.Append(AttackedHome.Bea, "212/72 and its report");
        File.Delete(home.Path);

        home.Restore(old, AttackedHome.Ann).Error.ShouldBeNull();

        home.Texts(AttackedHome.Ann)[^1].ShouldBe("restored 5, lost 1");
        home.Findings().ShouldBeEmpty();
    }

    [Fact]
    public void An_old_file_put_back_while_the_program_was_killed_is_refused()
    {
        byte[] old = File.ReadAllBytes(home.Path);
        using (Journal killed = home.Open(AttackedHome.Bea))
        {
            killed.Append("212/72 and its report"u8.ToArray());
            // What lies there while the program still runs is what a kill would leave.
            File.Copy(home.PlaceFile(), home.PlaceFile() + ".kept");
        }

        File.Move(home.PlaceFile(".kept"), home.PlaceFile(""), overwrite: true);
        File.WriteAllBytes(home.Path, old);

        home.Refused(AttackedHome.Ann).Problem.ShouldBe(JournalProblem.Older);
        home.Findings().ShouldBe(["events 6 to 6 are missing at the end: this device has seen them"]);
    }

    [Fact]
    public void An_old_file_put_back_and_what_the_device_remembers_deleted_is_refused_and_found()
    {
        byte[] old = File.ReadAllBytes(home.Path);
        home.Append(AttackedHome.Bea, "212/72 and its report");
        File.WriteAllBytes(home.Path, old);
        File.Delete(home.PlaceFile(""));

        home.Refused(AttackedHome.Ann).Problem.ShouldBe(JournalProblem.UnknownPlace);
        home.Refused(AttackedHome.Bea, accepts: true).Message.ShouldContain("only a supervisor or the recovery key takes a journal as it is");
        home.Findings().ShouldBe(["what this device remembers of its end is gone"]);
        using Journal accepted = home.TryOpen(AttackedHome.Ann, accepts: true).Journal.ShouldNotBeNull();
        accepted.Count.ShouldBe(5);
    }

    [Theory]
    [InlineData(512)]
    [InlineData(1024)]
    public void What_the_device_remembers_written_over_with_a_lower_number_is_not_believed(int at)
    {
        home.Append(AttackedHome.Bea, "212/72 and its report");
        byte[] place = File.ReadAllBytes(home.PlaceFile(""));
        place[at + 7] = 1;
        File.WriteAllBytes(home.PlaceFile(""), place);

        // The other record is whole and says the truth.
        home.Texts(AttackedHome.Bea)[^1].ShouldBe("212/72 and its report");
        place[512 + 7] = 1;
        place[1024 + 7] = 1;
        File.WriteAllBytes(home.PlaceFile(""), place);
        home.Refused(AttackedHome.Bea).Problem.ShouldBe(JournalProblem.UnknownPlace);
    }

    [Fact]
    public void A_restore_tried_in_another_folder_leaves_the_live_journal_as_it_was()
    {
        string old = home.Backup("old");
        home.Append(AttackedHome.Bea, "of today");
        string drill = Path.Combine(home.Folder, "drill.journal");

        home.Restore(old, AttackedHome.Ann, drill).Error.ShouldBeNull();

        home.Texts(AttackedHome.Ann)[^1].ShouldBe("of today");
        home.Findings().ShouldBeEmpty();
        using Journal tried = Journal.Open(drill, home.Access(AttackedHome.Ann)).Journal.ShouldNotBeNull();
        tried.Count.ShouldBe(6);
        JournalVerification.Verify(drill, home.States).Verdict!.Findings.ShouldBeEmpty();
    }

    [Fact]
    public void The_recovery_key_restores_too()
    {
        string old = home.Backup("old");
        File.Delete(home.Path);

        home.Restore(old, new Credential.Recovery(RecoveryKey.New())).Error!.Problem.ShouldBe(JournalProblem.WrongPin);
        home.Restore(old, new Credential.Recovery(paper)).Error.ShouldBeNull();
        home.Texts(AttackedHome.Bea)[^1].ShouldBe("restored 5, lost 0");
    }
}
