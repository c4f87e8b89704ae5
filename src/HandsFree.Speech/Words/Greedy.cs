namespace HandsFree.Speech.Words;

/// <summary>What the network hears without a grammar, for a person to look at.</summary>
internal static class Greedy
{
    /// <summary>Stands for a word that is none of ours.</summary>
    internal const string OtherWord = "<x>";

    /// <summary>The likeliest place of each row, repetitions and blanks taken out.</summary>
    internal static string Text(ReadOnlySpan<float> rows, int width, Func<int, string> word)
    {
        var words = new List<string>();
        int before = WordsModel.Blank;
        for (int start = 0; start < rows.Length; start += width)
        {
            int best = Largest(rows.Slice(start, width));
            if (best != before && best != WordsModel.Blank)
            {
                words.Add(word(best));
            }

            before = best;
        }

        return string.Join(' ', words);
    }

    private static int Largest(ReadOnlySpan<float> row)
    {
        int best = 0;
        for (int i = 1; i < row.Length; i++)
        {
            best = row[i] > row[best] ? i : best;
        }

        return best;
    }
}
