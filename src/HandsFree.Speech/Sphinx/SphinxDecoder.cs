using System.Runtime.InteropServices;

namespace HandsFree.Speech.Sphinx;

/// <summary>One native decoder: a dictionary, named searches, one utterance at a time. Serves one thread at a time.</summary>
internal sealed class SphinxDecoder : IDisposable
{
    private readonly SphinxDecoderHandle handle;

    private SphinxDecoder(SphinxDecoderHandle handle) => this.handle = handle;

    /// <summary>Starts a decoder, or gives null: the model could not be loaded.</summary>
    /// <param name="acousticModel">The model's folder.</param>
    /// <param name="dictionary">The dictionary's file, or null for none: words are added later.</param>
    /// <param name="settings">More options of PocketSphinx, name and value in turn.</param>
    internal static SphinxDecoder? Start(string acousticModel, string? dictionary, IReadOnlyList<string> settings)
    {
        SphinxNative.err_set_logfp(0);
        string[] words = dictionary is null ? [] : ["-dict", dictionary];
        string[] arguments = ["handsfree", "-hmm", acousticModel, .. words, "-logfn", "/dev/null", .. settings];
        using SphinxSettingsHandle parsed =
            SphinxNative.cmd_ln_parse_r(0, SphinxNative.ps_args(), arguments.Length, arguments, strict: 1);
        if (parsed.IsInvalid)
        {
            return null;
        }

        SphinxDecoderHandle decoder = SphinxNative.ps_init(parsed);
        return decoder.IsInvalid ? null : new(decoder);
    }

    internal bool Knows(string word)
    {
        nint phones = SphinxNative.ps_lookup_word(handle, word);
        SphinxNative.ckd_free(phones);
        return phones != 0;
    }

    internal bool AddWord(string word, string phones) => SphinxNative.ps_add_word(handle, word, phones, update: 0) >= 0;

    /// <summary>Compiles a JSGF text to a search. All its words must be known; false when the decoder refuses it.</summary>
    internal bool AddSearch(string name, string jsgf) => SphinxNative.ps_set_jsgf_string(handle, name, jsgf) == 0;

    internal void RemoveSearch(string name) => _ = SphinxNative.ps_unset_search(handle, name);

    internal bool UseSearch(string name) => SphinxNative.ps_set_search(handle, name) == 0;

    /// <summary>Decodes a whole utterance with the search in use.</summary>
    /// <param name="samples">16 kHz mono.</param>
    /// <param name="count">How many hypotheses of the list are looked at; 1 asks for no list.</param>
    /// <returns>Null when the search found no way through.</returns>
    internal SphinxResult? Decode(ReadOnlySpan<short> samples, int count)
    {
        // Without a new stream the counted frames and the noise estimate of the last utterance stay.
        bool done = SphinxNative.ps_start_stream(handle) >= 0
            && SphinxNative.ps_start_utt(handle) >= 0
            && SphinxNative.ps_process_raw(handle, samples, (nuint)samples.Length, noSearch: 0, wholeUtterance: 1) >= 0
            && SphinxNative.ps_end_utt(handle) >= 0;
        if (!done)
        {
            throw new InvalidOperationException("PocketSphinx did not process the audio");
        }

        string? best = Text(SphinxNative.ps_get_hyp(handle, out int score));
        if (string.IsNullOrEmpty(best))
        {
            return null;
        }

        return new(best, score, SphinxNative.ps_get_n_frames(handle), count > 1 ? List(count) : []);
    }

    public void Dispose() => handle.Dispose();

    private static string? Text(nint pointer) => Marshal.PtrToStringUTF8(pointer);

    /// <summary>Goes through the list of the word lattice; the same words with another segmentation count once.</summary>
    private List<SphinxHypothesis> List(int count)
    {
        var known = new HashSet<string>(StringComparer.Ordinal);
        List<SphinxHypothesis> hypotheses = [];
        nint list = SphinxNative.ps_nbest(handle);
        for (int seen = 0; list != 0 && seen < count; seen++)
        {
            if (Text(SphinxNative.ps_nbest_hyp(list, out int score)) is { Length: > 0 } words && known.Add(words))
            {
                hypotheses.Add(new(words, score));
            }

            list = SphinxNative.ps_nbest_next(list); // frees the list itself when it gives 0
        }

        if (list != 0)
        {
            SphinxNative.ps_nbest_free(list);
        }

        return hypotheses;
    }
}
