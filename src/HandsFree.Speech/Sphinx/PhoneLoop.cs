namespace HandsFree.Speech.Sphinx;

/// <summary>A second decoder that hears any speech as a row of phones. How far its score leads the grammar's tells what is no
/// sentence of the grammar; it does not tell confused digits.</summary>
internal sealed class PhoneLoop : IDisposable
{
    private const string Search = "phones";

    private static readonly string[] Phones =
    [
        "AA", "AE", "AH", "AO", "AW", "AY", "B", "CH", "D", "DH", "EH", "ER", "EY", "F", "G", "HH", "IH", "IY", "JH", "K",
        "L", "M", "N", "NG", "OW", "OY", "P", "R", "S", "SH", "T", "TH", "UH", "UW", "V", "W", "Y", "Z", "ZH",
    ];

    private readonly SphinxDecoder decoder;

    private PhoneLoop(SphinxDecoder decoder) => this.decoder = decoder;

    /// <summary>Starts the decoder, or gives null: the model could not be loaded or lacks a phone.</summary>
    internal static PhoneLoop? Start(SphinxOptions options, IReadOnlyList<string> settings)
    {
        SphinxDecoder? decoder = SphinxDecoder.Start(options.AcousticModel, dictionary: null, settings);
        if (decoder is not null && Phones.All(p => decoder.AddWord(Word(p), p)) && decoder.AddSearch(Search, Jsgf()) && decoder.UseSearch(Search))
        {
            return new(decoder);
        }

        decoder?.Dispose();
        return null;
    }

    /// <summary>The loop's score for each frame, or null when it found no speech.</summary>
    internal double? PerFrame(ReadOnlySpan<short> samples) => decoder.Decode(samples, count: 1)?.PerFrame;

    public void Dispose() => decoder.Dispose();

    private static string Word(string phone) => "phone_" + phone.ToLowerInvariant();

    private static string Jsgf() => $"#JSGF V1.0;\ngrammar phones;\npublic <phones> = ({string.Join(" | ", Phones.Select(Word))})+;\n";
}
