namespace HandsFree.Audio.Wav;

/// <summary>Carries the reason why a file is refused up to <see cref="WavReader"/>, which turns it into a value; never leaves this room.</summary>
internal sealed class WavFormatException(string reason) : Exception(reason);
