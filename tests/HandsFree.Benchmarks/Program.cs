using System.CommandLine;
using HandsFree.Benchmarks.AllEngines;
using HandsFree.Benchmarks.Calibrating;
using HandsFree.Benchmarks.Comparing;
using HandsFree.Benchmarks.Dictations;
using HandsFree.Benchmarks.Exchanging;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Journals;
using HandsFree.Benchmarks.Live;
using HandsFree.Benchmarks.Micro;
using HandsFree.Benchmarks.ShiftChange;
using HandsFree.Benchmarks.Simulated;
using HandsFree.Benchmarks.Tables;
using HandsFree.Benchmarks.Training;
using HandsFree.Benchmarks.Words;

return new RootCommand("HandsFree's measurements: speed, memory and errors are measured here and asserted nowhere")
{
    HearingCommand.Make(),
    HearingTable.Make(),
    EnginesCommand.Make(),
    CompareCommand.Make(),
    TablesCommand.Make(),
    CalibrateCommand.Make(),
    DictationsCommand.Make(),
    MicroCommand.Make(),
    JournalCommands.Speed(),
    JournalCommands.Kill(),
    JournalCommands.Flip(),
    JournalCommands.PowerCut(),
    JournalCommands.Writer(),
    JournalCommands.Opener(),
    JournalCommands.Faults(),
    JournalCommands.Locker(),
    LiveShiftCommand.Make(),
    LiveLatencyCommand.Make(),
    LongShiftCommand.Make(),
    WordsCalibration.Make(),
    SentencesCommand.Make(),
    SimulatedHomeCommand.Make(),
    HandoverSpeedCommand.Make(),
    ExchangeSpeedCommand.Make(),
}.Parse(args).Invoke();
