using System.CommandLine;
using HandsFree.Benchmarks.AllEngines;
using HandsFree.Benchmarks.Comparing;
using HandsFree.Benchmarks.Dictations;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Journals;
using HandsFree.Benchmarks.Micro;
using HandsFree.Benchmarks.Small;
using HandsFree.Benchmarks.Sphinx;
using HandsFree.Benchmarks.Training;

Argument<string> shared = new("AUDIO") { Description = "The folder of shared recordings" };
Argument<string> parameters = new("FILE") { Description = "The parameters to write" };
Command threshold = new("sphinx-threshold", "Chooses where sphinx refuses, on half of the speakers, and reports on the other half") { shared, parameters };
threshold.SetAction(parsed => SphinxThreshold.Run(parsed.GetValue(shared)!, parsed.GetValue(parameters)!, Console.Out));

return new RootCommand("HandsFree's measurements: speed, memory and errors are measured here and asserted nowhere")
{
    HearingCommand.Make(),
    EnginesCommand.Make(),
    CompareCommand.Make(),
    DictationsCommand.Make(),
    MicroCommand.Make(),
    JournalCommands.Speed(),
    JournalCommands.Kill(),
    JournalCommands.Flip(),
    JournalCommands.PowerCut(),
    JournalCommands.Writer(),
    threshold,
    SmallCalibration.Make(),
    SentencesCommand.Make(),
}.Parse(args).Invoke();
