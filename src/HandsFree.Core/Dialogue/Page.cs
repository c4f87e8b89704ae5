using System.Collections.Immutable;

namespace HandsFree.Core.Dialogue;

/// <summary>One state's part of the table. Every kind of event has a row, ignoring included; a row can't be given twice.</summary>
internal sealed class Page(StateKind state)
{
    private readonly Dictionary<Trigger, Row> rows = [];

    public StateKind State { get; } = state;

    public IReadOnlyDictionary<Trigger, Row> Rows => rows;

    /// <summary>Decides one kind of event.</summary>
    public Page On(Trigger trigger, string doing, Func<Turn, Turn> handle, params StateKind[] to)
    {
        rows.Add(trigger, new Row(doing, handle, to.ToImmutableHashSet()));
        return this;
    }

    /// <summary>Decides several kinds of event in the same way.</summary>
    public Page On(Trigger[] triggers, string doing, Func<Turn, Turn> handle, params StateKind[] to)
    {
        foreach (Trigger trigger in triggers)
        {
            On(trigger, doing, handle, to);
        }

        return this;
    }

    /// <summary>These events change nothing and are not answered.</summary>
    public Page Ignore(params Trigger[] triggers)
    {
        foreach (Trigger trigger in triggers)
        {
            rows.Add(trigger, new Row("", turn => turn, [State]));
        }

        return this;
    }
}
