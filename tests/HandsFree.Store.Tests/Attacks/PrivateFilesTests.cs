using HandsFree.Store.Journaling;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 6: what is sealed is not open to other users of the machine either.</summary>
public sealed class PrivateFilesTests
{
    [Fact]
    public void Every_file_of_a_journal_its_log_its_backup_and_the_device_is_this_user_s_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("files have no mode there");
            return;
        }

        using AttackedHome home = new AttackedHome().WithPeople().Home;
        home.Backup("backup");
        using Journal open = home.Open(AttackedHome.Bea);
        open.Append("pulse 72"u8.ToArray());
        open.SaveView(Path.Combine(home.Folder, "view"), 6, "all"u8.ToArray());
        open.Recordings(Path.Combine(home.Folder, "audio")).ShouldNotBeNull();

        string[] files = Directory.GetFiles(home.Folder, "*", SearchOption.AllDirectories);

        files.Length.ShouldBeGreaterThanOrEqualTo(9);
        foreach (string file in files)
        {
            File.GetUnixFileMode(file).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite, file);
        }
    }
}
