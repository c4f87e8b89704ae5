using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>Says of a configuration whether a wanted value can still come of it.</summary>
internal sealed class Goal(SemanticValue wanted)
{
    private readonly Outlook outlook = new();
    private readonly Dictionary<Configuration, bool> known = [];
    private readonly SemanticRecord fields = wanted as SemanticRecord ?? SemanticRecord.Empty;

    public bool IsPossible(Configuration at)
    {
        if (!known.TryGetValue(at, out bool possible))
        {
            possible = Find(at);
            known.Add(at, possible);
        }

        return possible;
    }

    private bool Find(Configuration at)
    {
        Dictionary<string, SemanticValue> settled = [];
        HashSet<string> open = [];
        FieldSets later = FieldSets.None;
        bool mayLose = false;
        foreach (var (frame, remaining, mayBeReplaced) in JoinedFrames(at))
        {
            Settle(frame.Fields, mayLose);
            mayLose |= remaining.MayLose;
            if (frame.Passed is SemanticRecord passed)
            {
                Settle(passed, mayLose || mayBeReplaced);
            }

            later = ReferenceEquals(later, FieldSets.None) ? remaining : remaining.PassedOn(remaining.MayLose).Then(later);
        }

        return later.Own.Concat(later.Passed)
                .All(m => fields[m.Key] is { } value && (m.Value is null || settled.ContainsKey(m.Key) || m.Value.Equals(value)))
            && settled.All(s => open.Contains(s.Key) || later.May.Contains(s.Key) || s.Value.Equals(fields[s.Key]))
            && ResultsFit(at.Frame);

        void Settle(SemanticRecord record, bool isOpen)
        {
            foreach (var (name, value) in record.Fields)
            {
                if (isOpen || !settled.TryAdd(name, value))
                {
                    settled[name] = value;
                    open.Add(name);
                }
            }
        }
    }

    /// <summary>The frames whose fields end in the sentence's own record, outermost first, with what the rest of each may set and
    /// whether the referred rule that is open in it may replace what was passed on to it.</summary>
    private IEnumerable<(Frame Frame, FieldSets Remaining, bool MayBeReplaced)> JoinedFrames(Configuration at)
    {
        var levels = new Stack<(Frame Frame, FieldSets Remaining, bool MayBeReplaced)>();
        Rule? below = null;
        Continuation? rest = at.Rest;
        for (Frame? frame = at.Frame; frame is not null; frame = frame.Parent)
        {
            FieldSets sum = FieldSets.None;
            for (; rest is { Node: not null }; rest = rest.Rest)
            {
                sum = sum.Then(outlook.Of(rest.Node, frame.Rule));
            }

            rest = rest?.Rest;
            levels.Push((frame, sum, below is not null && !frame.Rule.Used.Contains(below.Name) && outlook.MayBeNoRecord(below)));
            below = frame.Rule;
        }

        Frame? above = null;
        foreach (var level in levels)
        {
            if (outlook.SetsValue(level.Frame.Rule) || above?.Rule.Used.Contains(level.Frame.Rule.Name) == true)
            {
                yield break;
            }

            yield return level;
            above = level.Frame;
        }
    }

    private bool ResultsFit(Frame? frame)
    {
        for (; frame is not null; frame = frame.Parent)
        {
            bool fits = frame.Result switch
            {
                SemanticList list => Contains(wanted, whole => whole is SemanticList all && Begins(all, list)),
                SemanticText text when frame.Rule.Used.Contains("") =>
                    Contains(wanted, whole => whole is SemanticText all && all.Value.Contains(text.Value, StringComparison.Ordinal)),
                _ => true,
            };
            if (!fits)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Begins(SemanticList whole, SemanticList some) => whole.Items.Take(some.Items.Length).SequenceEqual(some.Items);

    private static bool Contains(SemanticValue value, Func<SemanticValue, bool> holds) => holds(value) || value switch
    {
        SemanticList list => list.Items.Any(i => Contains(i, holds)),
        SemanticRecord record => record.Fields.Any(f => Contains(f.Value, holds)),
        _ => false,
    };
}
