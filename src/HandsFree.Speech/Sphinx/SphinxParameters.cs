using System.Text.Json;

namespace HandsFree.Speech.Sphinx;

/// <summary>The measured numbers of this engine; Data/sphinx-parameters.json, where the run that made them is noted.</summary>
/// <param name="Version">Counted up with every change.</param>
/// <param name="Note">How they were found and what they gave.</param>
/// <param name="ScoreScale">Natural log probability for one unit of difference between two hypotheses' scores.</param>
/// <param name="WordCost">Units of score for each word: the word insertion penalty of the settings, natural logarithm over 0.1024.</param>
/// <param name="SilenceDecibels">Below this level of the loudest 100 ms nothing was said; decibels of full scale.</param>
/// <param name="Hypotheses">How many hypotheses are read from the word lattice, at most.</param>
/// <param name="GrammarSettings">Options of the grammar's decoder that differ from PocketSphinx's own, name and value in turn.</param>
/// <param name="LoopSettings">The same for the phone loop's decoder.</param>
internal sealed record SphinxParameters(
    int Version, string Note, double ScoreScale, double WordCost, double SilenceDecibels, int Hypotheses,
    IReadOnlyList<string> GrammarSettings, IReadOnlyList<string> LoopSettings)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>Those that the assembly carries.</summary>
    internal static SphinxParameters Measured { get; } = JsonSerializer.Deserialize<SphinxParameters>(SphinxData.Read("sphinx-parameters.json"), Json)
        ?? throw new InvalidDataException("sphinx-parameters.json is empty");
}
