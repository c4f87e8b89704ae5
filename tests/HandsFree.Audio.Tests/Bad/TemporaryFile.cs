namespace HandsFree.Audio.Tests.Bad;

/// <summary>A file in a folder of its own that goes away with the test.</summary>
internal sealed class TemporaryFile : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("handsfree-audio-");

    public TemporaryFile(string name, byte[] bytes)
    {
        Path = System.IO.Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(Path, bytes);
    }

    public string Path { get; }

    public void Dispose() => _folder.Delete(recursive: true);
}
