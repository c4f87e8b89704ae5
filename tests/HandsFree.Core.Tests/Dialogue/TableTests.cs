using HandsFree.Core.Dialogue;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

public sealed class TableTests
{
    [Fact]
    public void Every_state_decides_every_kind_of_event()
    {
        foreach (StateKind state in Enum.GetValues<StateKind>())
        {
            TransitionTable.Pages[state].Rows.Keys.ShouldBe(Enum.GetValues<Trigger>(), ignoreOrder: true, $"in {state}");
        }
    }

    [Fact]
    public void The_diagram_is_the_one_of_the_table() => Golden.Match(DialogueDiagram.Mermaid());

    [Fact]
    public void The_table_in_words() => Golden.Match(string.Join('\n', TransitionTable.Pages.Values.OrderBy(p => p.State).SelectMany(Words)));

    private static IEnumerable<string> Words(Page page) =>
        page.Rows.OrderBy(r => r.Key).Select(r => $"{page.State} | {r.Key} | {(r.Value.IsIgnored ? "-" : r.Value.Doing)}");
}
