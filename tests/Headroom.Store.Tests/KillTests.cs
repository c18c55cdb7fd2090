using System.Diagnostics;
using System.Globalization;

namespace Headroom.Store.Tests;

public sealed class KillTests
{
    private const int Kills = 200;

    [Fact]
    public async Task Nothing_acknowledged_is_lost_when_the_writer_is_killed_in_the_middle()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "SIGKILL is of other systems");
        using var stores = new TestStores("SQLite");
        stores.Open().Add("Barn", JobText.Of(KilledWriter.TextOf(1)), new("x", "1"));
        var random = new Random(20261125);
        var acknowledged = 1;
        for (var kill = 0; kill < Long.Samples(Kills); kill++)
        {
            acknowledged = Math.Max(acknowledged, await WriteAndKill(stores.Folder, random.Next(1, 60)));
            using var store = JobStore.Open(stores.Place, TimeProvider.System);
            var head = store.Find(KilledWriter.Job)!.Head;
            Assert.True(head >= acknowledged, $"revision {acknowledged} was acknowledged, {head} is the last there is");
            Assert.Empty(store.Check());
            Assert.Equal(KilledWriter.TextOf(head), store.Read(KilledWriter.Job)!.Text);
            Assert.Equal(KilledWriter.TextOf(acknowledged), store.Read(KilledWriter.Job, acknowledged)!.Text);
        }

        Assert.True(acknowledged > Long.Samples(Kills), $"only {acknowledged} were written: nothing was killed in the middle");
    }

    private static async Task<int> WriteAndKill(string folder, int milliseconds)
    {
        using var writer = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, "") { RedirectStandardOutput = true, Environment = { [KilledWriter.Variable] = folder } })!;
        var last = 0;
        // From the first word on it writes; then the wait begins.
        if (await writer.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } first)
            last = int.Parse(first, CultureInfo.InvariantCulture);
        await Task.Delay(milliseconds, TestContext.Current.CancellationToken);
        writer.Kill();
        // A last line that was cut off was not acknowledged.
        var rest = await writer.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await writer.WaitForExitAsync(TestContext.Current.CancellationToken);
        return rest.LastIndexOf('\n') is > 0 and var end ? int.Parse(rest[..end].Split('\n')[^1], CultureInfo.InvariantCulture) : last;
    }
}
