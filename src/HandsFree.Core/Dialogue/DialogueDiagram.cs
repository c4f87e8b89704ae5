using System.Text;

namespace HandsFree.Core.Dialogue;

/// <summary>The dialogue as a Mermaid state diagram, written from the table.</summary>
public static class DialogueDiagram
{
    /// <summary>Every way from one state into another, with the events that lead there; what stays in its state is left out.</summary>
    public static string Mermaid()
    {
        var text = new StringBuilder("stateDiagram-v2\n    [*] --> AwaitingRoom\n");
        foreach (Page page in TransitionTable.Pages.Values.OrderBy(p => p.State))
        {
            var ways = page.Rows.OrderBy(r => r.Key)
                .SelectMany(r => r.Value.To.Select(to => (r.Key, To: to)))
                .Where(way => way.To != page.State)
                .GroupBy(way => way.To, way => way.Key)
                .OrderBy(g => g.Key);
            foreach (var way in ways)
            {
                text.Append($"    {page.State} --> {way.Key}: {string.Join(", ", way)}\n");
            }
        }

        return text.Append("    Ended --> [*]\n").ToString();
    }
}
