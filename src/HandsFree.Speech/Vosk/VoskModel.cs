namespace HandsFree.Speech.Vosk;

/// <summary>A loaded model: knows its words and starts decoders.</summary>
internal sealed class VoskModel : IDisposable
{
    internal const string Unknown = "[unk]";
    private readonly VoskModelHandle handle;

    private VoskModel(VoskModelHandle handle) => this.handle = handle;

    /// <summary>Loads a model whose files <see cref="VoskModelFiles"/> has seen; null when the library refuses it.</summary>
    internal static VoskModel? Load(string folder)
    {
        VoskModelHandle model = VoskNative.vosk_model_new(folder);
        return model.IsInvalid ? null : new(model);
    }

    internal bool Knows(string word) => VoskNative.vosk_model_find_word(handle, word) >= 0;

    internal VoskDecoder Start(string phrases, int alternatives)
    {
        VoskDecoderHandle decoder = VoskNative.vosk_recognizer_new_grm(handle, 16_000, phrases);
        return decoder.IsInvalid
            ? throw new InvalidOperationException("libvosk made no recogniser of the phrases")
            : new(decoder, alternatives);
    }

    public void Dispose() => handle.Dispose();
}
