using HandsFree.Core.Dialogue;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

public sealed class DevelopersPageTests
{
    private const string Begin = "<!-- dialogue diagram: begin -->\n", End = "<!-- dialogue diagram: end -->";

    [Fact]
    public void The_developers_page_shows_the_diagram_of_the_table_as_it_is()
    {
        string path = Path.Combine(Shared.Repository, "DEVELOPERS.md");
        string page = File.ReadAllText(path);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        string diagram = "```mermaid\n" + DialogueDiagram.Mermaid().ReplaceLineEndings("\n").TrimEnd('\n') + "\n```\n";
        if (Golden.Updates)
        {
            File.WriteAllText(path, page[..from] + diagram + page[to..]);
            return;
        }

        page[from..to].ShouldBe(diagram, "run this test once with UPDATE_GOLDEN=1");
    }
}
