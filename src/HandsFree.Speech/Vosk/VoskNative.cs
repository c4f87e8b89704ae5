using System.Runtime.InteropServices;

namespace HandsFree.Speech.Vosk;

/// <summary>The functions of libvosk 0.3.39 that are needed; vosk_api.h. <see cref="VoskLibrary"/> finds the file.</summary>
internal static partial class VoskNative
{
    internal const string Library = "libvosk";

    [LibraryImport(Library)]
    internal static partial void vosk_set_log_level(int level);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial VoskModelHandle vosk_model_new(string folder);

    [LibraryImport(Library)]
    internal static partial void vosk_model_free(nint model);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int vosk_model_find_word(VoskModelHandle model, string word);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial VoskDecoderHandle vosk_recognizer_new_grm(VoskModelHandle model, float sampleRate, string phrases);

    [LibraryImport(Library)]
    internal static partial void vosk_recognizer_free(nint recognizer);

    [LibraryImport(Library)]
    internal static partial void vosk_recognizer_set_max_alternatives(VoskDecoderHandle recognizer, int count);

    [LibraryImport(Library)]
    internal static partial int vosk_recognizer_accept_waveform_s(VoskDecoderHandle recognizer, ReadOnlySpan<short> samples, int count);

    [LibraryImport(Library)]
    internal static partial nint vosk_recognizer_result(VoskDecoderHandle recognizer);

    [LibraryImport(Library)]
    internal static partial nint vosk_recognizer_final_result(VoskDecoderHandle recognizer);
}
