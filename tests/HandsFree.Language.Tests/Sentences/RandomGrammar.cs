using System.Globalization;
using System.Text;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>Writes small grammars at random: no repetition, rules refer only to later ones, the last one means a number.</summary>
internal sealed class RandomGrammar(Random random)
{
    private const int Last = 3;

    public string Body()
    {
        var text = new StringBuilder();
        for (int rule = 0; rule < Last; rule++)
        {
            text.Append(rule == 0 ? "public " : "").Append(CultureInfo.InvariantCulture, $"<r{rule}> = ").Append(Alternatives(rule, 2)).Append(";\n");
        }

        return text.Append(CultureInfo.InvariantCulture, $"<r{Last}> = {Word()} {{1}} | {Word()} {{2}} | {Word()} {Word()} {{{random.Next(1, 4)}}};\n").ToString();
    }

    private string Alternatives(int rule, int depth) =>
        string.Join(" | ", Enumerable.Range(0, random.Next(1, 4)).Select(_ => Sequence(rule, depth)));

    private string Sequence(int rule, int depth)
    {
        var said = new List<int>();
        IEnumerable<string> items = Enumerable.Range(0, random.Next(1, 4)).Select(_ => Item(rule, depth, said)).ToList();
        string sequence = string.Join(' ', items);
        return random.Next(2) == 0 ? sequence : sequence + " " + Tag(said);
    }

    private string Item(int rule, int depth, List<int> said)
    {
        switch (random.Next(depth > 0 ? 6 : 3))
        {
            case 0 or 1:
                return Word();
            case 2:
                int target = random.Next(rule + 1, Last + 1);
                said.Add(target);
                return $"<r{target}>";
            case 3:
                return $"[{Alternatives(rule, depth - 1)}]";
            case 4:
                return $"({Alternatives(rule, depth - 1)})";
            default:
                return $"{Word()} {Tag(said)}";
        }
    }

    private string Tag(List<int> said)
    {
        string value = said.Count == 0
            ? random.Next(3).ToString(CultureInfo.InvariantCulture)
            : said[random.Next(said.Count)] switch
            {
                Last when random.Next(2) == 0 => $"$r{Last} * 2 - 1",
                int rule when random.Next(3) == 0 => $"$r{rule} & 'x'",
                int rule => $"$r{rule}",
            };
        return random.Next(3) == 0 ? $"{{ {value} }}" : $"{{ {(random.Next(2) == 0 ? 'f' : 'g')} = {value} }}";
    }

    private string Word() => "abc".Substring(random.Next(3), 1);
}
