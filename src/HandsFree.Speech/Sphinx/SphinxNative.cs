using System.Runtime.InteropServices;

namespace HandsFree.Speech.Sphinx;

/// <summary>The functions of libpocketsphinx and libsphinxbase 0.8+5prealpha (Debian's libpocketsphinx3) that are needed;
/// pocketsphinx.h, cmd_ln.h, err.h and ckd_alloc.h of that version.</summary>
internal static partial class SphinxNative
{
    internal const string Library = "libpocketsphinx.so.3";
    internal const string BaseLibrary = "libsphinxbase.so.3";

    [LibraryImport(Library)]
    internal static partial nint ps_args();

    [LibraryImport(BaseLibrary, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial SphinxSettingsHandle cmd_ln_parse_r(nint inOut, nint definitions, int count, string[] arguments, int strict);

    [LibraryImport(BaseLibrary)]
    internal static partial int cmd_ln_free_r(nint settings);

    [LibraryImport(BaseLibrary)]
    internal static partial void ckd_free(nint pointer);

    [LibraryImport(BaseLibrary)]
    internal static partial void err_set_logfp(nint file);

    [LibraryImport(Library)]
    internal static partial SphinxDecoderHandle ps_init(SphinxSettingsHandle settings);

    [LibraryImport(Library)]
    internal static partial int ps_free(nint decoder);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int ps_add_word(SphinxDecoderHandle decoder, string word, string phones, int update);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial nint ps_lookup_word(SphinxDecoderHandle decoder, string word);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int ps_set_jsgf_string(SphinxDecoderHandle decoder, string name, string jsgf);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int ps_set_search(SphinxDecoderHandle decoder, string name);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial int ps_unset_search(SphinxDecoderHandle decoder, string name);

    [LibraryImport(Library)]
    internal static partial int ps_start_stream(SphinxDecoderHandle decoder);

    [LibraryImport(Library)]
    internal static partial int ps_start_utt(SphinxDecoderHandle decoder);

    [LibraryImport(Library)]
    internal static partial int ps_end_utt(SphinxDecoderHandle decoder);

    [LibraryImport(Library)]
    internal static partial int ps_process_raw(SphinxDecoderHandle decoder, ReadOnlySpan<short> samples, nuint count, int noSearch, int wholeUtterance);

    [LibraryImport(Library)]
    internal static partial int ps_get_n_frames(SphinxDecoderHandle decoder);

    [LibraryImport(Library)]
    internal static partial nint ps_get_hyp(SphinxDecoderHandle decoder, out int score);

    [LibraryImport(Library)]
    internal static partial nint ps_nbest(SphinxDecoderHandle decoder);

    [LibraryImport(Library)]
    internal static partial nint ps_nbest_next(nint list);

    [LibraryImport(Library)]
    internal static partial nint ps_nbest_hyp(nint list, out int score);

    [LibraryImport(Library)]
    internal static partial void ps_nbest_free(nint list);
}
