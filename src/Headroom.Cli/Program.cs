using Headroom.Cli;

return Shell.Run(args, Desk.OfProcess());
