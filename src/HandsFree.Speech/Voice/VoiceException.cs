namespace HandsFree.Speech.Voice;

/// <summary>A voice could not speak.</summary>
/// <param name="message">What failed and what to do, on one line.</param>
/// <param name="inner">What was thrown below, or null.</param>
public sealed class VoiceException(string message, Exception? inner = null) : Exception(message, inner);
