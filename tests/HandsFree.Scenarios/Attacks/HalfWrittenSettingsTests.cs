using HandsFree.App.Live;
using HandsFree.Core.Files;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack, or only a power cut: the machine stops while its settings are written.</summary>
public sealed class HalfWrittenSettingsTests
{
    [Fact]
    public void Sound_settings_that_can_t_be_finished_leave_the_old_ones()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "a folder without write permission is made with Unix modes");
        using TemporaryHome folder = new();
        string file = folder.At("sound.json");
        new SoundSettings { Microphone = "headset" }.Write(file).ShouldBeNull();
        long before = new FileInfo(file).Length;

        // A reader at any moment sees the old file whole or the new one whole: the file that is open is never written into.
        using FileStream open = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        new SoundSettings { Microphone = new string('m', 5_000) }.Write(file).ShouldBeNull();

        open.Length.ShouldBe(before);
        List<FileError> errors = [];
        SoundSettings.Read(file, errors).Microphone!.Length.ShouldBe(5_000);
        errors.ShouldBeEmpty();
        Directory.GetFiles(folder.Path).ShouldHaveSingleItem();
    }
}
