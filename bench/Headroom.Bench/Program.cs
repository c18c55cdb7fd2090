using Headroom.Bench;

// Repeat: dotnet run -c Release --project bench/Headroom.Bench            prints the figures
//         dotnet run -c Release --project bench/Headroom.Bench -- --write  writes docs/figures.md as well
var page = FiguresPage.Make();
Console.Write(page.Text);
if (args.Contains("--write"))
    File.WriteAllText(Path.Combine(FiguresPage.Root, "docs", "figures.md"), page.Text);
return page.BarsKept ? 0 : 1;
