namespace HandsFree.Audio.Wav;

/// <summary>Reads WAV files: 8 to 48 kHz, PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits, mono or stereo (the mean of both), at
/// most 10 minutes and 200 MB. What can't be read comes back as a reason, never as an exception.</summary>
public static class WavReader
{
    /// <summary>The largest file in bytes: 200 MB.</summary>
    public const long MaximumBytes = 200_000_000;

    /// <summary>The longest recording: 10 minutes.</summary>
    public static readonly TimeSpan MaximumDuration = TimeSpan.FromMinutes(10);

    /// <summary>Reads a file; the error names it as it was given.</summary>
    public static WavResult Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (Directory.Exists(path))
        {
            return WavResult.Refused(path, "a folder, not a file");
        }

        if (!Path.Exists(path))
        {
            return WavResult.Refused(path, "no such file");
        }

        try
        {
            using FileStream stream = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return Read(stream, path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return WavResult.Refused(path, $"can't be read: {e.Message}");
        }
    }

    /// <summary>Reads a stream from its present position; one that can't seek is taken into memory first, up to the largest size.</summary>
    /// <param name="stream">Left open.</param>
    /// <param name="name">What the error calls it.</param>
    public static WavResult Read(Stream stream, string name)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(name);
        try
        {
            using Stream? copy = stream.CanSeek && stream.Position == 0 ? null : BoundedCopy(stream);
            return WavResult.Of(ReadSeekable(copy ?? stream));
        }
        catch (WavFormatException e)
        {
            return WavResult.Refused(name, e.Message);
        }
        catch (IOException e)
        {
            return WavResult.Refused(name, $"can't be read: {e.Message}");
        }
    }

    private static AudioClip ReadSeekable(Stream stream)
    {
        if (stream.Length > MaximumBytes)
        {
            throw TooLarge();
        }

        WavLayout layout = RiffScanner.Scan(stream);
        if (layout.Frames > (long)(MaximumDuration.TotalSeconds * layout.Format.SampleRate))
        {
            double minutes = layout.Frames / 60.0 / layout.Format.SampleRate;
            throw new WavFormatException(FormattableString.Invariant(
                $"too long: {minutes:0.0} minutes; at most {MaximumDuration.TotalMinutes:0} are read"));
        }

        return SampleDecoder.Decode(stream, layout);
    }

    private static MemoryStream BoundedCopy(Stream stream)
    {
        MemoryStream copy = new();
        byte[] block = new byte[64 * 1024];
        for (int got = stream.Read(block); got > 0; got = stream.Read(block))
        {
            if (copy.Length + got > MaximumBytes)
            {
                throw TooLarge();
            }

            copy.Write(block, 0, got);
        }

        copy.Position = 0;
        return copy;
    }

    private static WavFormatException TooLarge() => new($"too large: at most {MaximumBytes / 1_000_000} MB are read");
}
