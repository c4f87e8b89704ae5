using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>A file that ends too early, at every page and in the middle of one: found, and not opened as if it were whole.</summary>
internal static class TruncatedFile
{
    private const int PageSize = 4096;

    public static string Try(int times)
    {
        using TrialFolder folder = TrialFolder.New();
        using (Store.Journaling.Journal journal = folder.Open())
        {
            journal.AppendAll([.. Enumerable.Range(1, 25 * times).Select(i => (ReadOnlyMemory<byte>)Sound.Body(i))]);
        }

        byte[] whole = File.ReadAllBytes(folder.File);
        int tried = 0;
        for (int length = PageSize; length < whole.Length; length += PageSize / 2)
        {
            File.Delete($"{folder.File}-wal");
            File.Delete($"{folder.File}-shm");
            File.WriteAllBytes(folder.File, whole[..length]);
            (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.File, folder.States);
            FaultMissedException.Unless(error is not null || verdict!.Findings.Count > 0, $"{length} of {whole.Length} bytes verify");
            tried++;
        }

        File.WriteAllBytes(folder.File, whole);
        Sound.Holds(folder, 25 * times);
        return $"held: {tried} lengths, every one found, the whole file again sound";
    }
}
