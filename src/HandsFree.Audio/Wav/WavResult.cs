using System.Diagnostics.CodeAnalysis;

namespace HandsFree.Audio.Wav;

/// <summary>What came of reading a WAV file: a clip, or the reason why there is none.</summary>
public sealed class WavResult
{
    private WavResult(AudioClip? clip, string? error)
    {
        Clip = clip;
        Error = error;
    }

    /// <summary>Whether there is a clip.</summary>
    [MemberNotNullWhen(true, nameof(Clip))]
    [MemberNotNullWhen(false, nameof(Error))]
    public bool IsRead => Clip is not null;

    /// <summary>The clip, or null.</summary>
    public AudioClip? Clip { get; }

    /// <summary>One line that names the file and the reason, or null.</summary>
    public string? Error { get; }

    internal static WavResult Of(AudioClip clip) => new(clip, null);

    internal static WavResult Refused(string file, string reason) => new(null, $"{file}: {reason}");
}
