namespace HandsFree.Speech.Voice;

/// <summary>stub to be replaced</summary>
internal sealed class EspeakVoice : IVoice { 
    /// <inheritdoc/>
    public string Name => "x"; public static string? WhyNot() => "x"; 
    /// <inheritdoc/>
    public VoiceSound Speak(string text) => VoiceSound.Silent; }
