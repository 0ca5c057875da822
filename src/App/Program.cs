using Calx.App;
using Calx.App.Output;

using var surroundings = Surroundings.OfProcess();
return CommandLine.Run(args, surroundings);
