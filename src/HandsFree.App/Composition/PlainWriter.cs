using System.Text;
using HandsFree.Core.Files;

namespace HandsFree.App.Composition;

/// <summary>The terminal's door: whatever text comes from a record, from a file or from another machine, nothing in it can steer the
/// terminal or turn the direction of writing. Line ends and tabs pass.</summary>
/// <param name="inner">Gets what may pass.</param>
internal sealed class PlainWriter(TextWriter inner) : TextWriter
{
    private char high;

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value)
    {
        if (char.IsHighSurrogate(value))
        {
            PassHalf();
            high = value;
            return;
        }

        string text = high == 0 ? value.ToString() : $"{high}{value}";
        high = '\0';
        inner.Write(PlainText.ShownLines(text));
    }

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    /// <inheritdoc/>
    public override void Write(string? value)
    {
        PassHalf();
        inner.Write(PlainText.ShownLines(value ?? ""));
    }

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        PassHalf();
        inner.WriteLine(PlainText.ShownLines(value ?? ""));
    }

    /// <inheritdoc/>
    public override void WriteLine()
    {
        PassHalf();
        inner.WriteLine();
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        PassHalf();
        inner.Flush();
    }

    // The half of a character that nothing followed.
    private void PassHalf()
    {
        if (high != 0)
        {
            high = '\0';
            inner.Write(PlainText.Mark);
        }
    }
}
