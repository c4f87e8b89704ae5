namespace HandsFree.App.Demo;

/// <summary>A folder that is gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    /// <summary>Where it is.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("handsfree-demo-").FullName;

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
