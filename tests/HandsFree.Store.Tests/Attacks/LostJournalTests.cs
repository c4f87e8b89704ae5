using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 5: a lost journal is not an empty one.</summary>
public sealed class LostJournalTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().WithPeople().Home;

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_journal_that_was_deleted_is_an_error_and_no_new_one_is_begun()
    {
        File.Delete(home.Path);

        home.Refused(AttackedHome.Ann).Problem.ShouldBe(JournalProblem.Gone);
        home.Refused(new Credential.Device()).Message.ShouldContain("this device had a journal here, and the file is gone");
        JournalVerification.Verify(home.Path, home.States).Error!.Problem.ShouldBe(JournalProblem.Gone);
        File.Exists(home.Path).ShouldBeFalse();
    }

    [Fact]
    public void Another_journal_in_its_place_is_refused()
    {
        using AttackedHome other = new AttackedHome().Begun();
        File.Copy(other.Path, home.Path, overwrite: true);
        foreach (string file in Directory.GetFiles(other.States, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(home.States, Path.GetRelativePath(other.States, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }

        home.Refused(new Credential.Device()).Message.ShouldContain("another journal than this device has seen here");
    }
}
