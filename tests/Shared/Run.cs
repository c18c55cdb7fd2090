using System.Diagnostics;

namespace Headroom.Tests;

/// <summary>Runs real processes, the published <c>headroom</c> first of all.</summary>
internal static class Run
{
    private static readonly Lazy<string> Published = new(FindPublished);

    /// <summary>The command as a user starts it, run from the root of the source tree.</summary>
    public static ProcessResult Headroom(params string[] arguments) => Process(HeadroomStart(arguments));

    /// <summary>
    /// A start of the command, to be changed with <c>with</c> where a test needs another folder, input or variable.
    /// HEADROOM_EXE names another executable or .dll to test, such as an installed one.
    /// </summary>
    public static ProcessStart HeadroomStart(params string[] arguments)
    {
        var command = Published.Value;
        // As the script does: these four start without the web server's libraries.
        var quick = Path.ChangeExtension(command, ".quick.runtimeconfig.json");
        if (arguments is ["check" or "study" or "explain" or "reckon", ..] && File.Exists(quick))
            return new ProcessStart("dotnet", ["exec", "--runtimeconfig", quick, command, .. arguments]) { Environment = Plain };
        return (command.EndsWith(".dll", StringComparison.OrdinalIgnoreCase)
            ? new ProcessStart("dotnet", [command, .. arguments])
            : new ProcessStart(command, arguments)) with { Environment = Plain };
    }

    /// <summary>Runs to the end; kills and fails when that takes longer than allowed.</summary>
    public static ProcessResult Process(ProcessStart start)
    {
        using var process = System.Diagnostics.Process.Start(Info(start)) ?? throw new InvalidOperationException($"{start.File} did not start.");
        // All three streams at once: a process that waits for one of them while we wait for another would stand still.
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        var input = Task.Run(() => Feed(process, start.Input));
        var all = Task.WhenAll(output, error, input, process.WaitForExitAsync());
        if (Task.WhenAny(all, Task.Delay(start.Timeout)).GetAwaiter().GetResult() != all)
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"Killed after {start.Timeout.TotalSeconds} s: {start.File} {string.Join(' ', start.Arguments)}");
        }

        all.GetAwaiter().GetResult();
        return new ProcessResult(process.ExitCode, Normal(output.Result), Normal(error.Result));
    }

    // The same on every machine: no colour, no language, one time zone, and nothing that steers the tests themselves.
    private static readonly Dictionary<string, string?> Plain = new()
    {
        ["NO_COLOR"] = "1", ["LC_ALL"] = "C", ["LANG"] = "C", ["LANGUAGE"] = null, ["TZ"] = "UTC", ["COLUMNS"] = null, ["TERM"] = "xterm", ["HEADROOM_ASCII"] = null,
        ["HEADROOM_ACCEPT"] = null, ["HEADROOM_LONG"] = null, ["HEADROOM_EXE"] = null,
    };

    private static ProcessStartInfo Info(ProcessStart start)
    {
        var info = new ProcessStartInfo(start.File, start.Arguments)
        {
            WorkingDirectory = start.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in start.Environment)
        {
            if (value is null)
                info.Environment.Remove(name);
            else
                info.Environment[name] = value;
        }

        return info;
    }

    private static void Feed(Process process, string text)
    {
        try
        {
            process.StandardInput.Write(text);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // The process ended, or closed its input, without reading all of it: its good right.
        }
    }

    // Through the start script, so that no test runs yesterday's build.
    private static string FindPublished()
    {
        if (Environment.GetEnvironmentVariable("HEADROOM_EXE") is { Length: > 0 } given)
            return given;

        var script = Repository.PathOf(OperatingSystem.IsWindows() ? "headroom.cmd" : "headroom");
        var built = Process(new ProcessStart(script, "--version") { Timeout = TimeSpan.FromMinutes(10) });
        Assert.True(built.ExitCode == 0, $"The start script could not build headroom.\n{built.Err}");
        var build = File.ReadAllText(Repository.PathOf("artifacts/run/current")).Trim();
        return Repository.PathOf($"artifacts/run/{build}/headroom.dll");
    }

    private static string Normal(string text) => text.ReplaceLineEndings("\n");
}
