using System.Text;

namespace HandsFree.Speech.Neural;

/// <summary>The model's tokens. The file is a list of byte strings, each behind its length: one byte below 128, else the low seven
/// bits first and a second byte times 128. U+2581 at a token's start is the blank before a word.</summary>
internal sealed class Vocabulary
{
    /// <summary>Decoding begins after this token.</summary>
    public const int Start = 1;

    /// <summary>The end of the text.</summary>
    public const int End = 2;

    /// <summary>Tokens below are control tokens and raw bytes; the model writes the digits with those above.</summary>
    public const int FirstText = 259;

    private const char Blank = '\u2581';
    private readonly string[] texts;

    internal Vocabulary(string[] texts)
    {
        this.texts = texts;
        Tree = new TokenTrie();
        for (int token = FirstText; token < texts.Length; token++)
        {
            if (texts[token].Length > 0)
            {
                Tree.Add(texts[token], token);
            }
        }
    }

    /// <summary>All text tokens by their characters, blanks as ' '.</summary>
    public TokenTrie Tree { get; }

    /// <summary>Reads the token list.</summary>
    /// <exception cref="InvalidDataException">The file ends inside a token.</exception>
    public static Vocabulary Read(string path)
    {
        byte[] bytes = File.ReadAllBytes(path);
        var texts = new List<string>();
        int at = 0;
        while (at < bytes.Length)
        {
            int length = bytes[at++];
            if (length >= 128)
            {
                length = at < bytes.Length ? (length & 0x7F) + bytes[at++] * 128 : int.MaxValue;
            }

            if (length > bytes.Length - at)
            {
                throw new InvalidDataException($"{path}: ends inside token {texts.Count}; get the file again");
            }

            texts.Add(Encoding.UTF8.GetString(bytes, at, length).Replace(Blank, ' '));
            at += length;
        }

        return new([.. texts]);
    }

    /// <summary>The text of a sequence of tokens, with the blank in front that most begin with.</summary>
    public string Text(IEnumerable<int> tokens) => string.Concat(tokens.Select(t => texts[t]));
}
