namespace HandsFree.Speech.Sphinx;

/// <summary>Where PocketSphinx finds its model.</summary>
public sealed record SphinxOptions
{
    /// <summary>The folder of Debian's package pocketsphinx-en-us: acoustic model in "en-us", dictionary "cmudict-en-us.dict".</summary>
    public string ModelFolder { get; init; } = "/usr/share/pocketsphinx/model/en-us";

    internal string AcousticModel => Path.Combine(ModelFolder, "en-us");

    internal string Dictionary => Path.Combine(ModelFolder, "cmudict-en-us.dict");
}
