using HandsFree.Audio.Wav;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Bad;

public sealed class BadFileTests
{
    public static TheoryData<string> Names => [.. BadFiles.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_broken_file_is_refused_with_its_name_and_the_reason(string name)
    {
        (byte[] bytes, string reason) = BadFiles.All[name];
        using TemporaryFile file = new(name, bytes);

        WavResult result = WavReader.Read(file.Path);

        result.IsRead.ShouldBeFalse();
        result.Clip.ShouldBeNull();
        result.Error.ShouldBe($"{file.Path}: {reason}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_stream_that_cannot_seek_gives_the_same_reason(string name)
    {
        (byte[] bytes, string reason) = BadFiles.All[name];
        using OneWayStream stream = new(bytes);

        WavReader.Read(stream, "standard input").Error.ShouldBe($"standard input: {reason}");
    }

    [Fact]
    public void A_missing_file_is_refused()
    {
        string path = Path.Combine(Path.GetTempPath(), "handsfree-no-such-folder", "gone.wav");

        WavReader.Read(path).Error.ShouldBe($"{path}: no such file");
    }

    [Fact]
    public void A_folder_is_refused()
    {
        WavReader.Read(AppContext.BaseDirectory).Error.ShouldBe($"{AppContext.BaseDirectory}: a folder, not a file");
    }

    [Fact]
    public void A_file_above_200_MB_is_refused_before_it_is_read()
    {
        using TemporaryFile file = new("enormous.wav", []);
        using (FileStream stream = new(file.Path, FileMode.Open))
        {
            stream.SetLength(WavReader.MaximumBytes + 1);
        }

        WavReader.Read(file.Path).Error.ShouldBe($"{file.Path}: too large: at most 200 MB are read");
    }

    [Fact]
    public void A_stream_that_never_ends_is_refused_after_200_MB()
    {
        using OneWayStream endless = new([], endless: true);

        WavReader.Read(endless, "pipe").Error.ShouldBe("pipe: too large: at most 200 MB are read");
    }

    [Fact]
    public void A_stream_that_breaks_is_refused_with_the_reason()
    {
        using OneWayStream broken = new([1, 2, 3], failure: "the cable was pulled");

        WavReader.Read(broken, "pipe").Error.ShouldBe("pipe: can't be read: the cable was pulled");
    }
}
