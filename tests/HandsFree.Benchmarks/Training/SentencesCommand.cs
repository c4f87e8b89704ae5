using System.CommandLine;
using HandsFree.App.Hear;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.Benchmarks.Training;

/// <summary>"sentences FOLDER": sentences drawn from the grammars, for a recogniser to be trained on.</summary>
internal static class SentencesCommand
{
    public static Command Make()
    {
        Argument<string> folder = new("FOLDER") { Description = "The folder of grammars" };
        Option<int> count = new("--count") { Description = "Sentences for each state", DefaultValueFactory = _ => 1000 };
        Option<int> seed = new("--seed") { Description = "Of the draw", DefaultValueFactory = _ => 1 };
        Option<string?> state = new("--state") { Description = "Only this state, readings for one" };
        Option<string?> rule = new("--rule") { Description = "Only this rule of the state, reading for one" };
        Option<bool> words = new("--words") { Description = "Instead, all words of all states, sorted" };
        Command command = new("sentences", "Prints sentences drawn from the grammars, a line each") { folder, count, seed, state, rule, words };
        command.SetAction(parsed =>
        {
            Grammar[] grammars = [.. GrammarShelf.States
                .Where(name => parsed.GetValue(state) is not { } only || only == name)
                .Select(name => Grammar.Load(Path.Combine(parsed.GetValue(folder)!, name + ".jsgf"), parsed.GetValue(rule)))];
            var random = new Random(parsed.GetValue(seed));
            IEnumerable<string> lines = parsed.GetValue(words)
                ? grammars.SelectMany(g => g.Words).Distinct().Order(StringComparer.Ordinal)
                : grammars.SelectMany(g => Enumerable.Range(0, parsed.GetValue(count)).Select(_ => Sampler.Draw(g, random)));
            foreach (string line in lines)
            {
                Console.Out.WriteLine(line);
            }
        });
        return command;
    }
}
