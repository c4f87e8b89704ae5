namespace HandsFree.Speech.Voice;

/// <summary>Chooses the read-back voice of this machine.</summary>
public static class Voices
{
    /// <summary>The best voice that is here: flite, else espeak-ng; on Windows its own.</summary>
    /// <returns>The voice, or null and one line that says why there is none; the program then only shows the text.</returns>
    public static (IVoice? Voice, string? WhyNone) Best() => OperatingSystem.IsWindows() ? OnWindows() : Elsewhere();

    /// <summary>The voice of that name.</summary>
    /// <param name="name">"flite", "espeak-ng" or "windows".</param>
    /// <returns>The voice, or null and one line that says why it can't speak here.</returns>
    public static (IVoice? Voice, string? WhyNone) Named(string name) => name switch
    {
        "flite" => FliteVoice.WhyNot() is { } why ? (null, why) : (new FliteVoice(), null),
        "espeak-ng" => EspeakVoice.WhyNot() is { } why ? (null, why) : (new EspeakVoice(), null),
        "windows" => OperatingSystem.IsWindows() ? OnWindows() : (null, "the voice windows is on Windows only; use flite or espeak-ng"),
        _ => (null, $"there is no voice \"{name}\"; use flite, espeak-ng or windows"),
    };

    private static (IVoice?, string?) Elsewhere()
    {
        var (flite, noFlite) = Named("flite");
        if (flite is not null)
        {
            return (flite, null);
        }

        var (espeak, noEspeak) = Named("espeak-ng");
        return espeak is not null ? (espeak, null) : (null, $"no voice: {noFlite}; {noEspeak}");
    }

    [System.Runtime.Versioning.SupportedOSPlatform("windows")]
    private static (IVoice?, string?) OnWindows() => WindowsVoice.WhyNot() is { } why ? (null, why) : (new WindowsVoice(), null);
}
