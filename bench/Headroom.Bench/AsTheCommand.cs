using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Headroom.Bench;

/// <summary>Runs the figures under the settings of the runtime that the script which starts the command gives it.</summary>
internal static partial class AsTheCommand
{
    /// <summary>Starts this program once more with those settings, where it has not got them.</summary>
    /// <returns>The exit code of that run; null when this one has them, or when there is no such script here.</returns>
    public static int? StartAgain(string[] args)
    {
        var script = Path.Combine(FiguresPage.Root, "headroom");
        if (!File.Exists(script))
            return null;
        var missing = Settings().Matches(File.ReadAllText(script)).Where(one => Environment.GetEnvironmentVariable(one.Groups[1].Value) is null).ToList();
        if (missing.Count == 0)
            return null;
        var start = new ProcessStartInfo(Environment.ProcessPath!);
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
            start.ArgumentList.Add(typeof(AsTheCommand).Assembly.Location);
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        foreach (var one in missing)
            start.Environment[one.Groups[1].Value] = one.Groups[2].Value;
        using var again = Process.Start(start)!;
        again.WaitForExit();
        return again.ExitCode;
    }

    [GeneratedRegex(@"export (DOTNET_\w+)=""\$\{\1:-(\w+)\}""")]
    private static partial Regex Settings();
}
