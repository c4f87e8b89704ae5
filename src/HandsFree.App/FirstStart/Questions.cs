using HandsFree.App.Composition;

namespace HandsFree.App.FirstStart;

/// <summary>Questions at the terminal. Each has a default that Enter takes and a help that "?" shows; "leave" ends all of it.</summary>
internal sealed class Questions(Surroundings surroundings)
{
    private const string Leave = "leave";

    /// <summary>Whether somebody left, or nobody is there to answer any more.</summary>
    public bool Left { get; private set; }

    /// <summary>Says something.</summary>
    public void Say(string text) => surroundings.Out.WriteLine(text);

    /// <summary>Asks.</summary>
    /// <param name="question">Without a mark at its end.</param>
    /// <param name="otherwise">What Enter means.</param>
    /// <param name="help">What "?" shows.</param>
    /// <returns>The answer without white space around it; the default where somebody left.</returns>
    public string Ask(string question, string otherwise, string help)
    {
        while (!Left)
        {
            surroundings.Out.Write($"{question}{(otherwise.Length > 0 ? $" [{otherwise}]" : "")}: ");
            string? answer = surroundings.In.ReadLine()?.Trim();
            if (answer is null || string.Equals(answer, Leave, StringComparison.OrdinalIgnoreCase))
            {
                Left = true;
            }
            else if (answer == "?")
            {
                Say($"  {help}");
            }
            else
            {
                return answer.Length == 0 ? otherwise : answer;
            }
        }

        return otherwise;
    }

    /// <summary>Asks until it is one of some words.</summary>
    public string Choose(string question, IReadOnlyList<string> words, string help)
    {
        string answer = Ask($"{question}, {string.Join(" or ", words)}", words[0], help);
        while (!Left && !words.Contains(answer, StringComparer.OrdinalIgnoreCase))
        {
            answer = Ask($"  One of {string.Join(", ", words)}", words[0], help);
        }

        return answer.ToLowerInvariant();
    }

    /// <summary>Yes or no.</summary>
    public bool Yes(string question, string help) => Choose(question, ["yes", "no"], help) == "yes" && !Left;
}
