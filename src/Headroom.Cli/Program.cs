using Headroom.Cli;
using Headroom.Cli.Commands;

ShippedAhead.Begin(args);
return Shell.Run(args, Desk.OfProcess());
