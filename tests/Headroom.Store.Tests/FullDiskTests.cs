using System.Diagnostics;

namespace Headroom.Store.Tests;

/// <summary>A disk that really is full: a file system of two mebibytes in memory, which only root may mount.</summary>
public sealed class FullDiskTests
{
    private static readonly RevisionNote Note = new("R. Hollis", "first");

    [Fact]
    public void On_a_full_disk_a_save_is_refused_and_all_before_it_stays()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "only root may mount a small disk: the page limit of SQLite stands for it in WholeStoreTests");
        var folder = Directory.CreateTempSubdirectory("headroom-full-").FullName;
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=2m,mode=700", "headroom-test", folder) == 0, "this machine lets nobody mount a disk");
        try
        {
            var random = new Random(1);
            var place = new StorePlace(folder);
            var kept = new List<JobText>();
            using (var store = JobStore.Open(place, TimeProvider.System))
            {
                var id = store.Add("Barn", JobText.Of("small"), Note).Id;
                kept.Add(JobText.Of("small"));
                // Bytes that nothing can make smaller, until there is no room.
                var fault = Assert.Throws<StoreException>(() =>
                {
                    for (var saved = 1; saved < 200; saved++)
                    {
                        var bytes = new byte[60_000];
                        random.NextBytes(bytes);
                        var text = new JobText(bytes, JobText.NoFiles);
                        Assert.True(store.Save(id, saved, ("Barn", text), Note).Ok);
                        kept.Add(text);
                    }
                });
                Assert.Contains("whether the disk has room", fault.Message, StringComparison.Ordinal);
                Assert.InRange(kept.Count, 3, 40);
            }

            // What was acknowledged is there after a new start, though the disk is still full; then there is room again.
            using (var store = JobStore.Open(place, TimeProvider.System))
            {
                Assert.Empty(store.Check());
                Assert.Equal(kept.Count, store.Find("barn")!.Head);
                Assert.All(kept.Select((text, at) => (text, at)), one => Assert.True(store.Read("barn", one.at + 1)!.SameAs(one.text)));
            }

            Assert.Equal(0, Run("mount", "-o", "remount,size=8m", folder));
            using (var store = JobStore.Open(place, TimeProvider.System))
                Assert.True(store.Save("barn", kept.Count, ("Barn", JobText.Of("room again")), Note).Ok);
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            Run("umount", folder);
            Directory.Delete(folder, recursive: true);
        }
    }

    private static int Run(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return -1;
        }
    }
}
