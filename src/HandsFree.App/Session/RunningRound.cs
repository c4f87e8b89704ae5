namespace HandsFree.App.Session;

/// <summary>Held while a round runs, so that no other program takes it up. The system lets go of it when the program ends, however it ends.</summary>
internal static class RunningRound
{
    /// <summary>Takes it; null where another program has it.</summary>
    /// <param name="file">The round's file.</param>
    public static FileStream? Take(string file)
    {
        try
        {
            return new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException) when (File.Exists(file))
        {
            return null;
        }
    }
}
