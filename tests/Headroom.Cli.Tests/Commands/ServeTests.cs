using System.Diagnostics;

namespace Headroom.Cli.Tests.Commands;

public sealed class ServeTests
{
    [Fact]
    public async Task It_says_where_it_is_answers_there_and_ends_in_peace()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "ends by a signal of other systems");
        var folder = Directory.CreateTempSubdirectory("headroom-").FullName;
        var start = Run.HeadroomStart("serve", "--data", folder, "--urls", "http://127.0.0.1:0");
        var info = new ProcessStartInfo(start.File, start.Arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(info)!;
        try
        {
            var said = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
            Assert.Matches("^The desk is at http://127.0.0.1:[0-9]+  \\(Ctrl-C ends it\\)$", said);
            using var client = new HttpClient();
            Assert.Contains("There is no job yet", await client.GetStringAsync(said!.Split(' ')[4], TestContext.Current.CancellationToken), StringComparison.Ordinal);
            // To end it in peace, as Ctrl-C and a service manager do.
            using (var kill = Process.Start("kill", ["-TERM", $"{process.Id}"]))
                await kill.WaitForExitAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
            Assert.Equal((0, ""), (process.ExitCode, await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken)));
        }
        finally
        {
            if (!process.HasExited)
                process.Kill();
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_folder_that_cannot_be_one_is_refused()
    {
        var result = TestDesk.Run(["serve", "--data", Repository.PathOf("README.md")]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("cannot be made", result.Err, StringComparison.Ordinal);
    }
}
