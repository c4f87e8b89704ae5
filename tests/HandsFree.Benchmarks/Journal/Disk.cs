namespace HandsFree.Benchmarks.Journals;

/// <summary>The journal's two files, and what the device remembers of its end, as a disk holds them at one moment.</summary>
internal sealed class Disk
{
    private readonly Dictionary<string, byte[]> files;

    public Disk(byte[] journal, string placeName, byte[] place) => files = new() { ["journal.db"] = journal, [placeName] = place };

    private Disk(Dictionary<string, byte[]> files) => this.files = files;

    public Disk Copy() => new(files.ToDictionary(f => f.Key, f => (byte[])f.Value.Clone()));

    public void Apply(FileWrite call)
    {
        byte[] file = files.GetValueOrDefault(call.File, []);
        switch (call.Kind)
        {
            case FileWriteKind.Written:
                byte[] longer = new byte[Math.Max(file.Length, call.Offset + call.Bytes.Length)];
                file.CopyTo(longer, 0);
                call.Bytes.CopyTo(longer, call.Offset);
                files[call.File] = longer;
                break;
            case FileWriteKind.Cut:
                Array.Resize(ref file, (int)call.Offset);
                files[call.File] = file;
                break;
        }
    }

    /// <summary>One file becomes what another disk has.</summary>
    public void TakeFrom(Disk other, string file)
    {
        if (other.files.TryGetValue(file, out byte[]? content))
        {
            files[file] = (byte[])content.Clone();
        }
    }

    public void WriteTo(TrialFolder folder)
    {
        File.Delete($"{folder.File}-shm");
        File.Delete($"{folder.File}-wal");
        foreach ((string name, byte[] content) in files)
        {
            File.WriteAllBytes(System.IO.Path.Combine(folder.Path, name), content);
        }
    }
}
