using System.Collections.Immutable;
using System.Globalization;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Replaces values that later tags only copy by marks, numbered in the order of their first appearance.</summary>
internal sealed class Marks
{
    private readonly Dictionary<SemanticValue, SemanticValue> marks = [];

    private Marks()
    {
    }

    public static ImmutableArray<Configuration> Set(WordAutomaton automaton, ImmutableArray<Configuration> set)
    {
        var marks = new Marks();
        return [.. set.Select(c => automaton.With(c, c.Frame is null ? null : marks.On(c.Frame).Frame)).Distinct()];
    }

    /// <summary>The frame with marks, and whether its value may be a mark: no rule above computes with it.</summary>
    private (Frame Frame, bool IsCopied) On(Frame frame)
    {
        bool copied = true;
        Frame? parent = null;
        if (frame.Parent is not null)
        {
            (parent, bool above) = On(frame.Parent);
            copied = above && !frame.Parent.Rule.Computed.Contains(frame.Rule.Name);
        }

        return (frame.Marked(parent, name => copied && !frame.Rule.Computed.Contains(name), Mark), copied);
    }

    private SemanticValue Mark(SemanticValue value)
    {
        switch (value)
        {
            case SemanticList list:
                return new SemanticList([.. list.Items.Select(Mark)]);
            case SemanticRecord record:
                return new SemanticRecord([.. record.Fields.Select(f => KeyValuePair.Create(f.Key, Mark(f.Value)))]);
        }

        if (!marks.TryGetValue(value, out SemanticValue? mark))
        {
            mark = new SemanticText("\uE000" + marks.Count.ToString(CultureInfo.InvariantCulture) + "\uE001");
            marks.Add(value, mark);
        }

        return mark;
    }
}
