using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Headroom.Bench;

/// <summary>Runs the figures under the settings of the runtime that the script which starts the command gives it.</summary>
internal static partial class AsTheCommand
{
    /// <summary>The settings, as the script has them; none where there is no such script.</summary>
    public static IReadOnlyList<(string Name, string Value)> Settings { get; } = Read();

    /// <summary>Starts this program once more with those settings, where it has not got them.</summary>
    /// <returns>The exit code of that run; null when this one has them, or when there is no such script here.</returns>
    public static int? StartAgain(string[] args)
    {
        var missing = Settings.Where(one => Environment.GetEnvironmentVariable(one.Name) is null).ToList();
        if (missing.Count == 0)
            return null;
        var start = new ProcessStartInfo(Environment.ProcessPath!);
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
            start.ArgumentList.Add(typeof(AsTheCommand).Assembly.Location);
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        foreach (var (name, value) in missing)
            start.Environment[name] = value;
        using var again = Process.Start(start)!;
        again.WaitForExit();
        return again.ExitCode;
    }

    private static List<(string Name, string Value)> Read()
    {
        var script = Path.Combine(FiguresPage.Root, "headroom");
        return File.Exists(script) ? [.. Line().Matches(File.ReadAllText(script)).Select(line => (line.Groups[1].Value, line.Groups[2].Value))] : [];
    }

    [GeneratedRegex(@"export (DOTNET_\w+)=""\$\{\1:-(\w+)\}""")]
    private static partial Regex Line();
}
