using System.Runtime.InteropServices;

namespace HandsFree.Speech.Vosk;

/// <summary>Decodes one utterance under one phrase list; made anew for each, because the next one would be decoded with what
/// was learnt of the speaker of the last.</summary>
internal sealed class VoskDecoder : IDisposable
{
    private readonly VoskDecoderHandle handle;

    internal VoskDecoder(VoskDecoderHandle handle, int alternatives)
    {
        this.handle = handle;
        VoskNative.vosk_recognizer_set_max_alternatives(handle, alternatives);
    }

    /// <summary>Takes the next samples, 16 kHz mono.</summary>
    /// <returns>True when the library finds the utterance ended: <see cref="Result"/> is due, more samples would drop it.</returns>
    internal bool Accept(ReadOnlySpan<short> samples) =>
        VoskNative.vosk_recognizer_accept_waveform_s(handle, samples, samples.Length) switch
        {
            < 0 => throw new InvalidOperationException("libvosk did not process the audio"),
            var ended => ended > 0,
        };

    /// <summary>The alternatives of what ended, best first.</summary>
    internal IReadOnlyList<VoskAlternative> Result() => Parse(VoskNative.vosk_recognizer_result(handle));

    /// <summary>The alternatives of all that was taken since the last result, best first.</summary>
    internal IReadOnlyList<VoskAlternative> Finish() => Parse(VoskNative.vosk_recognizer_final_result(handle));

    public void Dispose() => handle.Dispose();

    private static IReadOnlyList<VoskAlternative> Parse(nint json) => VoskAlternative.ParseAll(Marshal.PtrToStringUTF8(json) ?? "");
}
