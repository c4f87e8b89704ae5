namespace HandsFree.Language.Tags;

/// <summary>A tag can't be read or computed.</summary>
/// <param name="message">What is wrong and what was expected.</param>
/// <param name="offset">Characters from the start of the tag.</param>
public sealed class TagException(string message, int offset = 0) : Exception(message)
{
    /// <summary>Characters from the start of the tag.</summary>
    public int Offset { get; } = offset;
}
