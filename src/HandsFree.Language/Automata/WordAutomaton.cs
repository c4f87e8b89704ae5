using System.Collections.Immutable;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Tags;

namespace HandsFree.Language.Automata;

/// <summary>The nondeterministic automaton over words of a grammar. Its states carry meanings, so that each way through it ends in
/// a value and never in text that is parsed again. It unfolds only where it is walked; safe for several threads.</summary>
public sealed class WordAutomaton
{
    private readonly bool hasTags;
    private readonly Lock gate = new();
    private readonly Dictionary<(Expansion?, Continuation?), Continuation> continuations = [];
    private readonly Dictionary<(Continuation?, Frame?), Configuration> configurations = [];
    private readonly Dictionary<RepeatExpansion, RepeatExpansion> agains = [];

    /// <summary>An automaton of its own, where the grammar's shared one must not keep what is walked.</summary>
    /// <param name="grammar">The grammar.</param>
    public WordAutomaton(Grammar grammar)
    {
        ArgumentNullException.ThrowIfNull(grammar);
        hasTags = grammar.HasTags;
        Start = Intern(Then(grammar.Root.Body, Then(null, null)), Frame.Open(grammar.Root, null));
    }

    /// <summary>Before the first word.</summary>
    public Configuration Start { get; }

    /// <summary>How many configurations were unfolded so far.</summary>
    public int Size
    {
        get
        {
            lock (gate)
            {
                return configurations.Count;
            }
        }
    }

    /// <summary>What can follow.</summary>
    public Moves Next(Configuration at)
    {
        lock (gate)
        {
            return at.Moves ??= Unfold(at);
        }
    }

    /// <summary>A configuration that means the same and that nothing can follow: the sentence is over.</summary>
    public Configuration WithoutArcs(Configuration at) =>
        new(null, null) { Moves = new Moves([], Next(at).Meanings) };

    private Moves Unfold(Configuration at)
    {
        var arcs = ImmutableArray.CreateBuilder<Arc>();
        var meanings = ImmutableArray.CreateBuilder<SemanticValue>();
        var seen = new HashSet<(Continuation?, Frame?)>();
        var open = new Stack<(Continuation?, Frame?)>();
        open.Push((at.Rest, at.Frame));
        while (open.TryPop(out var state))
        {
            if (!seen.Add(state))
            {
                continue;
            }

            var (rest, frame) = state;
            if (rest is null)
            {
                meanings.Add(frame!.Passed ?? SemanticNothing.Only);
                continue;
            }

            Advance(rest, frame!, open, arcs);
        }

        return new(arcs.ToImmutable(), [.. meanings.Distinct()]);
    }

    private void Advance(
        Continuation rest, Frame frame, Stack<(Continuation?, Frame?)> open, ImmutableArray<Arc>.Builder arcs)
    {
        Continuation? after = rest.Rest;
        switch (rest.Node)
        {
            case null:
                Frame parent = frame.Parent ?? Frame.Open(frame.Rule, null);
                open.Push((after, frame.Parent is null ? parent with { Passed = frame.Value } : parent.Receive(frame.Rule.Name, frame.Value)));
                break;
            case WordExpansion word:
                arcs.Add(new(word.Word, Intern(after, hasTags ? frame : frame.Say(word.Word))));
                break;
            case TagExpansion tag:
                open.Push((after, Run(tag, frame)));
                break;
            case RuleExpansion rule when hasTags:
                open.Push((Then(rule.Target.Body, Then(null, after)), Frame.Open(rule.Target, frame)));
                break;
            case RuleExpansion rule:
                open.Push((Then(rule.Target.Body, after), frame));
                break;
            case SequenceExpansion sequence:
                Continuation? chain = after;
                for (int i = sequence.Parts.Length - 1; i >= 0; i--)
                {
                    chain = Then(sequence.Parts[i], chain);
                }

                open.Push((chain, frame));
                break;
            case AlternativesExpansion alternatives:
                for (int i = alternatives.Choices.Length - 1; i >= 0; i--)
                {
                    open.Push((Then(alternatives.Choices[i], after), frame));
                }

                break;
            case RepeatExpansion repeat:
                Repeat(repeat, after, frame, open);
                break;
        }
    }

    private static Frame Run(TagExpansion tag, Frame frame)
    {
        try
        {
            return frame.Run(tag.Program);
        }
        catch (TagException e)
        {
            throw new GrammarException(tag.At, e.Message);
        }
    }

    private void Repeat(RepeatExpansion repeat, Continuation? after, Frame frame, Stack<(Continuation?, Frame?)> open)
    {
        if (!repeat.AtLeastOnce)
        {
            open.Push((after, frame));
        }

        open.Push((Then(repeat.Body, after), frame));
        if (repeat.More)
        {
            open.Push((Then(repeat.Body, Then(Again(repeat), after)), frame));
        }
    }

    /// <summary>The node that stands for "once more, at least".</summary>
    private RepeatExpansion Again(RepeatExpansion repeat)
    {
        if (repeat.AtLeastOnce)
        {
            return repeat;
        }

        if (!agains.TryGetValue(repeat, out RepeatExpansion? again))
        {
            again = new RepeatExpansion(repeat.Body, true, true);
            agains.Add(repeat, again);
        }

        return again;
    }

    /// <summary>The configuration that has the same rest and another meaning so far.</summary>
    internal Configuration With(Configuration at, Frame? frame)
    {
        lock (gate)
        {
            return Intern(at.Rest, frame);
        }
    }

    private Continuation Then(Expansion? node, Continuation? rest)
    {
        if (!continuations.TryGetValue((node, rest), out Continuation? known))
        {
            known = new(node, rest);
            continuations.Add((node, rest), known);
        }

        return known;
    }

    private Configuration Intern(Continuation? rest, Frame? frame)
    {
        if (!configurations.TryGetValue((rest, frame), out Configuration? known))
        {
            known = new(rest, frame);
            configurations.Add((rest, frame), known);
        }

        return known;
    }
}
