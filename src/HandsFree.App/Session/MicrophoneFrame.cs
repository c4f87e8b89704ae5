namespace HandsFree.App.Session;

/// <summary>A piece of captured sound.</summary>
/// <param name="At">When its first sample was captured.</param>
/// <param name="Samples">16 kHz mono in [-1, 1]; valid until the next frame is read.</param>
internal readonly record struct MicrophoneFrame(DateTimeOffset At, ReadOnlyMemory<float> Samples);
