namespace HandsFree.Speech.Words;

/// <summary>The words that the network knows, and words that sound like one of them and are labelled as it ("too" as "to").</summary>
internal sealed class WordList
{
    private const string List = "words.txt", Same = "words-same.tsv";
    private readonly string[] words;
    private readonly Dictionary<string, int> places;

    private WordList(string[] words, IEnumerable<(string Heard, string Labelled)> same)
    {
        this.words = words;
        places = words.Select((word, i) => (word, i)).ToDictionary(w => w.word, w => w.i + 2, StringComparer.Ordinal);
        foreach ((string heard, string labelled) in same)
        {
            places[heard] = places[labelled];
        }
    }

    /// <summary>How many labels there are.</summary>
    internal int Count => words.Length;

    /// <summary>The list that the assembly carries.</summary>
    internal static WordList Carried() => new(Lines(List), Lines(Same).Skip(1).Select(line => line.Split('\t')).Select(pair => (pair[0], pair[1])));

    /// <summary>The place of a word in a row, 2 for the first; null for a word that the network does not know.</summary>
    internal int? Place(string word) => places.TryGetValue(word, out int place) ? place : null;

    /// <summary>The label at a place from 1.</summary>
    internal string At(int place) => place == WordsModel.Other ? Greedy.OtherWord : words[place - 2];

    private static string[] Lines(string name)
    {
        using var text = new StreamReader(WordsModel.Resource(name));
        return text.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }
}
