using System.Text;

namespace HandsFree.Core.Dialogue;

/// <summary>The dialogue as a Mermaid state diagram, written from the table.</summary>
public static class DialogueDiagram
{
    // What works the same way wherever it works would hide the rest.
    private static readonly Trigger[] Everywhere =
    [
        Trigger.Stop, Trigger.Goodbye, Trigger.Pause, Trigger.Place, Trigger.NextResident, Trigger.Cancel, Trigger.GoBack,
        Trigger.NothingHeard, Trigger.NotAReading, Trigger.PartOfAReading, Trigger.Unwell, Trigger.LockDue, Trigger.Resumed,
    ];

    /// <summary>Every way from one state into another, with the events that lead there; what stays in its state, and what works
    /// everywhere in the same way, is left out.</summary>
    public static string Mermaid()
    {
        var text = new StringBuilder("stateDiagram-v2\n");
        text.Append("    %% Everywhere: Stop, NextResident and Place leave the resident; Goodbye saves and ends; Pause waits; Cancel and GoBack\n");
        text.Append("    %% drop what is not confirmed; NothingHeard, NotAReading and PartOfAReading ask again and leave open after three.\n");
        text.Append("    %% Unwell leaves what waits and reports now; LockDue locks; Resumed asks for identity, then again.\n");
        text.Append("    [*] --> AwaitingRoom\n");
        foreach (Page page in TransitionTable.Pages.Values.OrderBy(p => p.State))
        {
            foreach (var way in Ways(page))
            {
                text.Append($"    {page.State} --> {way.Key}: {string.Join(", ", way)}\n");
            }
        }

        return text.Append("    Ended --> [*]\n").ToString();
    }

    private static IEnumerable<IGrouping<StateKind, Trigger>> Ways(Page page) => page.Rows
        .Where(r => (page.State == StateKind.AwaitingRoom && r.Key != Trigger.Unwell) || !Everywhere.Contains(r.Key))
        .OrderBy(r => r.Key)
        .SelectMany(r => r.Value.To.Select(to => (r.Key, To: to)))
        .Where(way => way.To != page.State)
        .GroupBy(way => way.To, way => way.Key)
        .OrderBy(g => g.Key);
}
