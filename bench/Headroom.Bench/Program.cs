using Headroom.Bench;

// Repeat: dotnet run -c Release --project bench/Headroom.Bench            prints the figures
//         dotnet run -c Release --project bench/Headroom.Bench -- --write  writes docs/figures.md as well
//         dotnet run -c Release --project bench/Headroom.Bench -- start    prints that part alone (power, cabling, whole, restart, years, sound, remedies, planner, reading, start, folder, papers, serve)
if (AsTheCommand.StartAgain(args) is { } exitCode)
    return exitCode;
var page = FiguresPage.Make([.. args.Where(arg => arg != "--write")]);
Console.Write(page.Text);
if (args is ["--write"])
    File.WriteAllText(Path.Combine(FiguresPage.Root, "docs", "figures.md"), page.Text);
return page.BarsKept ? 0 : 1;
