using System.Text;
using System.Collections.Immutable;
using HandsFree.Language.Automata;

namespace HandsFree.Language.Grammars;

/// <summary>A linked grammar with one root: the tree that matcher, sampler, engine compilers and help texts share.</summary>
public sealed class Grammar
{
    private readonly Lazy<WordAutomaton> automaton;

    internal Grammar(string name, Rule root, ImmutableArray<Rule> rules, GrammarFacts facts)
    {
        Name = name;
        Root = root;
        Rules = rules;
        Facts = facts;
        HasTags = facts.HasTag(root.Body);
        Words = rules.SelectMany(r => r.Body.Nodes().OfType<WordExpansion>()).Select(w => w.Word).ToImmutableSortedSet(StringComparer.Ordinal);
        automaton = new(() => new WordAutomaton(this));
    }

    /// <summary>What follows from the rules.</summary>
    internal GrammarFacts Facts { get; }

    /// <summary>Name of the grammar, with the rule where it isn't the grammar's own public one: "confirmation#answer".</summary>
    public string Name { get; }

    /// <summary>The rule that is listened for.</summary>
    public Rule Root { get; }

    /// <summary>All rules that the root reaches, itself first.</summary>
    public ImmutableArray<Rule> Rules { get; }

    /// <summary>Whether there is any tag; without one, a sentence means its own words.</summary>
    public bool HasTags { get; }

    /// <summary>All words that can be said, lower case.</summary>
    public IReadOnlySet<string> Words { get; }

    /// <summary>The automaton over words; made once.</summary>
    public WordAutomaton Automaton => automaton.Value;

    /// <summary>Reads a grammar file and what it imports from the same folder.</summary>
    /// <param name="path">The file.</param>
    /// <param name="rule">The rule to listen for, public or not; null for the public rules of the file.</param>
    /// <exception cref="GrammarException">With file, line, column and what was expected.</exception>
    public static Grammar Load(string path, string? rule = null)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return Linker.Link(ReadFile(path), Path.GetFileName(path), rule, name =>
        {
            string imported = Path.Combine(folder, name + ".jsgf");
            return File.Exists(imported) ? ReadFile(imported) : null;
        });
    }

    /// <summary>Reads a grammar from text.</summary>
    /// <param name="text">The JSGF text.</param>
    /// <param name="fileName">Its name for error messages.</param>
    /// <param name="rule">The rule to listen for; null for the public rules.</param>
    /// <param name="import">Gives the text of an imported grammar by name, or null.</param>
    /// <exception cref="GrammarException">With file, line, column and what was expected.</exception>
    public static Grammar Parse(string text, string fileName, string? rule = null, Func<string, string?>? import = null) =>
        Linker.Link(text, fileName, rule, import ?? (_ => null));

    private static string ReadFile(string path)
    {
        try
        {
            using var reader = new StreamReader(path);
            var text = new StringBuilder();
            char[] block = new char[16 * 1024];
            for (int read = reader.ReadBlock(block); read > 0 && text.Length <= Nesting.MostCharacters; read = reader.ReadBlock(block))
            {
                text.Append(block, 0, read);
            }

            return text.ToString();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new GrammarException($"{path}: can't be read ({e.Message}); name a JSGF file");
        }
    }
}
