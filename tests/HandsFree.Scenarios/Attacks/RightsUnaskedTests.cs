using System.Diagnostics;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack, or only too much zeal: a set-up that becomes root because sudo happens to ask for no password.</summary>
public sealed class RightsUnaskedTests
{
    [Theory]
    [InlineData(":", "refused")]
    [InlineData("HANDSFREE_SUDO=no", "refused")]
    [InlineData("HANDSFREE_SUDO=yes", "sudo -n")]
    public void Sudo_is_not_touched_where_nobody_was_asked(string environment, string outcome)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sudo is not of Windows");
        using TemporaryHome folder = new();
        folder.With("sudo", "#!/bin/sh\necho touched >>\"$0.log\"\n").With("id", "#!/bin/sh\necho 1000\n");
        foreach (string program in (string[])["sudo", "id"])
        {
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(folder.At(program), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }

        string setup = Path.Combine(Shared.Repository, "scripts", "setup", "system.sh");
        ProcessStartInfo start = new("bash", ["-c", $"{environment}; have() {{ command -v \"$1\" >/dev/null 2>&1; }}; PATH={folder.Path}:$PATH; . '{setup}'; if as_root; then echo \"$root_prefix\"; else echo refused; fi"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        using Process process = Process.Start(start)!;
        process.StandardInput.WriteLine("y");
        process.StandardInput.Close();

        process.StandardOutput.ReadToEnd().Trim().ShouldBe(outcome);
        process.WaitForExit();
        File.Exists(folder.At("sudo.log")).ShouldBeFalse();
    }
}
