using HandsFree.Language.Automata;

namespace HandsFree.Speech.Neural;

/// <summary>One way through the grammar at one character: inside the written form of a word, or at its end.</summary>
/// <param name="Target">The grammar's configuration after the word.</param>
/// <param name="Joint">How the word is written.</param>
/// <param name="Text">The written form.</param>
/// <param name="At">Characters of it that are written.</param>
/// <param name="Words">The spoken words up to and with this one; not compared: of two ways that differ in nothing else, one stays.</param>
internal sealed record WrittenItem(Configuration Target, Joint Joint, string Text, int At, WordPath? Words)
{
    public bool Equals(WrittenItem? other) =>
        other is not null && ReferenceEquals(Target, other.Target) && Joint == other.Joint && At == other.At && Text == other.Text;

    public override int GetHashCode() =>
        HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(Target), Joint, At, Text);
}

/// <summary>Words from the last to the first.</summary>
/// <param name="Word">The last word.</param>
/// <param name="Before">The words before it.</param>
internal sealed record WordPath(string Word, WordPath? Before)
{
    public override string ToString() => Before is null ? Word : Before + " " + Word;
}
