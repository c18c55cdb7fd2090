// The least a .NET console program can do; the start of the command is measured beside it.
Console.WriteLine("sound");
