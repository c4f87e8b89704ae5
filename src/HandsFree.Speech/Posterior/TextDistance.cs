namespace HandsFree.Speech.Posterior;

/// <summary>How different two texts are: the edit distance (Levenshtein 1966) of their letters and figures over the longer one's length.</summary>
internal static class TextDistance
{
    /// <summary>0 for the same letters and figures, 1 for none in common; capitals, blanks and punctuation don't count.</summary>
    public static double Of(string a, string b)
    {
        string left = Plain(a);
        string right = Plain(b);
        int longest = Math.Max(left.Length, right.Length);
        return longest == 0 ? 0 : (double)Edits(left, right) / longest;
    }

    private static int Edits(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[b.Length];
    }

    private static string Plain(string text) => new([.. text.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]);
}
