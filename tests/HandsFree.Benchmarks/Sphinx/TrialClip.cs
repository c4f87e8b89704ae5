using HandsFree.Language.Grammars;

namespace HandsFree.Benchmarks.Sphinx;

/// <summary>One recording of the shared audio.</summary>
/// <param name="Set">Its folder's name.</param>
/// <param name="Path">The file.</param>
/// <param name="Words">What is said in it.</param>
/// <param name="Grammar">What is listened for.</param>
/// <param name="Tuning">Whether its speaker belongs to the half that thresholds are chosen on.</param>
internal sealed record TrialClip(string Set, string Path, string Words, Grammar Grammar, bool Tuning)
{
    /// <summary>The first letter of its name: the kind of sentence in the synthetic sets.</summary>
    internal char Kind => System.IO.Path.GetFileName(Path)[0];

    /// <summary>What the tables call its kind.</summary>
    internal string Group => Set switch
    {
        "dictation-synthetic" => Kind switch { 'r' => "readings", 'c' => "commands", _ => "no reading" },
        "dialogue-synthetic" => "dialogue",
        _ => Set,
    };
}
