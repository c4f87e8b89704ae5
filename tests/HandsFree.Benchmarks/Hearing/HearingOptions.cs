using System.CommandLine;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Recordings;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>The options that say what is heard and how: the same for "hearing" and "engines".</summary>
internal sealed class HearingOptions
{
    private readonly Argument<string[]> folders = new("FOLDER")
    {
        Description = $"Folders of WAV files, each with a {TranscriptTable.Name} (file, speaker, words, and reading or meaning)",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<string?> state = new("--listening-for") { Description = "One state for all files; without it the state goes by the meaning" };
    private readonly Option<string?> grammar = new("--grammar") { Description = "A JSGF file for all files" };
    private readonly Option<int> every = Positive("--every", "Only each Nth recording");
    private readonly Option<int> threads = Positive("--threads", "Processor threads of one hearing");
    private readonly Option<string?> noise = new("--noise") { Description = "pink, babble (of the folder's other speakers) or a WAV file" };
    private readonly Option<double> snr = new("--snr") { Description = "Speech above the noise, dB; of the speech without its pauses", DefaultValueFactory = _ => 15 };
    private readonly Option<string?> microphone = new("--microphone") { Description = MicrophoneFaults.Help };
    private readonly Option<int> seed = new("--seed") { Description = "Of the noise and the room", DefaultValueFactory = _ => 1 };

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(folders);
        foreach (Option option in (Option[])[state, grammar, every, threads, noise, snr, microphone, seed])
        {
            command.Add(option);
        }
    }

    /// <summary>What was asked for.</summary>
    public HearingPlan Read(ParseResult parsed) => new()
    {
        Folders = parsed.GetValue(folders)!,
        State = parsed.GetValue(state),
        GrammarFile = parsed.GetValue(grammar),
        Every = parsed.GetValue(every),
        Threads = parsed.GetValue(threads),
        Noise = parsed.GetValue(noise),
        SnrDb = parsed.GetValue(snr),
        Microphone = parsed.GetValue(microphone) is { } faults ? MicrophoneFaults.Parse(faults) : null,
        Seed = parsed.GetValue(seed),
    };

    private static Option<int> Positive(string name, string description)
    {
        Option<int> option = new(name) { Description = description, DefaultValueFactory = _ => 1 };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() < 1)
            {
                result.AddError($"{name} counts from 1");
            }
        });
        return option;
    }
}
