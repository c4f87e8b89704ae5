using HandsFree.App.Checks;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Checks;

/// <summary>The fields of mountinfo are those of proc_pid_mountinfo(5), the prefix CRYPT- that of cryptsetup's device-mapper names; both from memory.</summary>
public sealed class DiskEncryptionTests : IDisposable
{
    private const string Mounts = """
        22 1 254:0 / / rw,relatime shared:1 - ext4 /dev/mapper/root rw
        30 22 254:1 / /home rw,relatime shared:2 - ext4 /dev/mapper/vg-home rw
        31 22 8:1 / /srv rw,relatime shared:3 - ext4 /dev/sda1 rw
        32 22 0:40 / /tmp rw shared:4 - tmpfs tmpfs rw
        """;

    private readonly DirectoryInfo blocks = Directory.CreateTempSubdirectory("handsfree-blocks-");

    public DiskEncryptionTests()
    {
        Uuid("254:0", "CRYPT-LUKS2-0123-root");
        Uuid("254:1", "LVM-abc");
        Uuid("254:1/slaves/dm-0", "CRYPT-LUKS2-0123-pv");
        blocks.CreateSubdirectory("8:1");
    }

    public void Dispose() => blocks.Delete(recursive: true);

    [Theory]
    [InlineData("/var/lib/home", true)] // dm-crypt itself
    [InlineData("/home/aide", true)] // a volume on dm-crypt
    [InlineData("/srv/home", false)] // a plain partition
    [InlineData("/srvother", true)] // of the root, not of /srv
    [InlineData("/tmp/home", null)] // memory
    public void Whether_a_folder_s_disk_is_encrypted_is_told_where_the_system_tells(string folder, bool? encrypted) =>
        new DiskEncryption(Mounts, blocks.FullName).Of(folder).ShouldBe(encrypted);

    private void Uuid(string device, string text)
    {
        DirectoryInfo folder = blocks.CreateSubdirectory($"{device}/dm");
        File.WriteAllText(Path.Combine(folder.FullName, "uuid"), text);
    }
}
