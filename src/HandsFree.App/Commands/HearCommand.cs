using System.CommandLine;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree hear": from recordings to readings.</summary>
internal static class HearCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string[]> files = new("FILE")
        {
            Description = "WAV recordings of one utterance each; a folder stands for all its .wav files",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string> state = new("--listening-for")
        {
            Description = $"What can have been said: {string.Join(", ", GrammarShelf.States)}",
            HelpName = "STATE",
            DefaultValueFactory = _ => GrammarShelf.States[0],
        };
        state.AcceptOnlyFromAmong([.. GrammarShelf.States]);
        Option<string?> grammar = new("--grammar") { Description = "A grammar of your own instead", HelpName = "FILE.jsgf" };
        Option<bool> json = new("--json") { Description = "One JSON object a line for each file; remarks go to stderr" };
        EngineOptions engine = new();
        Command command = new("hear", "Hears recordings: what was said in each, and how sure that is") { files, state, grammar, json };
        engine.AddTo(command);
        return host.Runs(command, (parsed, services) =>
        {
            Grammar listened;
            try
            {
                listened = parsed.GetValue(grammar) is { } own
                    ? Grammar.Load(own)
                    : services.GetRequiredService<GrammarShelf>().Of(parsed.GetValue(state)!);
            }
            catch (GrammarException broken)
            {
                return host.Refuse(broken.Message);
            }

            EngineChoice choice = engine.Start(parsed, services);
            if (!choice.TryGet(out IRecognizer? recognizer))
            {
                return host.Refuse(choice.Line);
            }

            using (recognizer)
            {
                bool asJson = parsed.GetValue(json);
                (asJson ? host.Surroundings.Error : host.Surroundings.Out).WriteLine(choice.Line);
                return Hear(parsed.GetValue(files)!, new FileHearer(recognizer, listened, services), asJson, host);
            }
        });
    }

    private static int Hear(IReadOnlyList<string> files, FileHearer hearer, bool asJson, CommandHost host)
    {
        if (hearer.WhyNot() is { } refused)
        {
            return host.Refuse(refused);
        }

        if (hearer.Remark is { } remark)
        {
            host.Surroundings.Error.WriteLine(remark);
        }

        TextWriter output = host.Surroundings.Out;
        int code = ExitCodes.Done;
        foreach ((string path, string? error) in WavFiles.Of(files))
        {
            (HeardFile? heard, string? why) = error is null ? hearer.Hear(path) : (null, error);
            if (heard is null)
            {
                code = host.Refuse($"{why}");
                continue;
            }

            output.WriteLine(asJson ? HeardFileJson.Of(heard) : HeardFileText.Of(heard));
            output.Flush();
        }

        return code;
    }
}
