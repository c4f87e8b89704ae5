using System.CommandLine;
using HandsFree.Benchmarks.AllEngines;
using HandsFree.Benchmarks.Calibrating;
using HandsFree.Benchmarks.Comparing;
using HandsFree.Benchmarks.Dictations;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Micro;

return new RootCommand("HandsFree's measurements: speed, memory and errors are measured here and asserted nowhere")
{
    HearingCommand.Make(),
    EnginesCommand.Make(),
    CompareCommand.Make(),
    CalibrateCommand.Make(),
    DictationsCommand.Make(),
    MicroCommand.Make(),
}.Parse(args).Invoke();
