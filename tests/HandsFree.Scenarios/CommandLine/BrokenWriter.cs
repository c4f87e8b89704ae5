using System.Text;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>A writer that fails as a bug would, with something in its message that no log may hold.</summary>
internal sealed class BrokenWriter : TextWriter
{
    public const string Secret = "Ada Quill";

    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => throw new NotSupportedException(Secret);
}
