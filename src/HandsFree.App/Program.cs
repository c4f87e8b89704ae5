using HandsFree.App.Commands;
using HandsFree.App.Composition;

return CommandLine.Run(args, Surroundings.OfThisProcess());
