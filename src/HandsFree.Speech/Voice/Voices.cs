namespace HandsFree.Speech.Voice;

/// <summary>Chooses the read-back voice of this machine. A voice from here throws nothing but <see cref="VoiceException"/>, and one that
/// can't even be made is a reason, not an error: no voice never stops a round.</summary>
public static class Voices
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(25);

    /// <summary>The best voice that is here: flite, else espeak-ng; on Windows its own.</summary>
    /// <returns>The voice, or null and one line that says why there is none; the program then only shows the text.</returns>
    public static (IVoice? Voice, string? WhyNone) Best() => OperatingSystem.IsWindows() ? OnWindows() : Elsewhere();

    /// <summary>The voice of that name.</summary>
    /// <param name="name">"flite", "espeak-ng" or "windows".</param>
    /// <returns>The voice, or null and one line that says why it can't speak here.</returns>
    public static (IVoice? Voice, string? WhyNone) Named(string name) => name switch
    {
        "flite" => Made(FliteVoice.WhyNot, () => new FliteVoice()),
        "espeak-ng" => Made(EspeakVoice.WhyNot, () => new EspeakVoice()),
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
    private static (IVoice?, string?) OnWindows() => Made(WindowsVoice.WhyNot, () => new WindowsVoice());

    /// <summary>Makes a voice.</summary>
    /// <param name="whyNot">Says why it can't speak here.</param>
    /// <param name="make">Makes it.</param>
    internal static (IVoice? Voice, string? WhyNone) Made(Func<string?> whyNot, Func<IVoice> make)
    {
        try
        {
            return whyNot() is { } why ? (null, why) : (new SteadyVoice(make(), Patience), null);
        }
#pragma warning disable CA1031 // What a foreign voice throws when it starts is the reason why there is none.
        catch (Exception any)
#pragma warning restore CA1031
        {
            return (null, $"the voice can't be started ({any.GetType().Name}: {any.Message.ReplaceLineEndings(" ")})");
        }
    }
}
