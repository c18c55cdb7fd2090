namespace Headroom.Cli.Tests.Commands;

public sealed class StoreTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("headroom-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_job_with_its_sheets_comes_out_byte_for_byte()
    {
        Store("import", Repository.PathOf("examples/print-shop/job.yaml"));
        Assert.Equal((0, ""), Told(Store("export", Id(), "--out", Path.Combine(_folder, "out"))));
        foreach (var file in Directory.GetFiles(Path.Combine(_folder, "out")))
            Assert.Equal(File.ReadAllBytes(Repository.PathOf("examples/print-shop/" + Path.GetFileName(file))), File.ReadAllBytes(file));
        Assert.Equal(["devices.csv", "drops.csv", "job.yaml"], Directory.GetFiles(Path.Combine(_folder, "out")).Select(Path.GetFileName).Order());
        Assert.Contains("is there already", Store("export", Id(), "--out", Path.Combine(_folder, "out")).Err, StringComparison.Ordinal);
    }

    [Fact]
    public void The_next_revision_says_what_changed()
    {
        var file = Path.Combine(_folder, "job.yaml");
        File.Copy(Repository.PathOf("examples/barn-vets/job.yaml"), file);
        Assert.Contains("is job cobnut-barn-animal-doctors, revision 1", Store("import", file, "--by", "R. Hollis").Out, StringComparison.Ordinal);
        Assert.Contains("nothing was put in", Store("import", file, "--as", Id()).Err, StringComparison.Ordinal);
        File.WriteAllText(file, File.ReadAllText(file).Replace("volts: 1 V", "volts: 2 V", StringComparison.Ordinal));
        Assert.Equal(0, Store("import", file, "--as", Id(), "--by", "J. Marsh").ExitCode);
        var list = Store("list", Id()).Out;
        Assert.Matches(@"2 .*, J. Marsh: volts of reserve of policy:\s+2 V, was 1 V", list);
        Assert.Matches(@"1 .*, R. Hollis: taken over from job.yaml", list);
        Assert.Contains("volts: 1 V", Store("export", Id(), "--revision", "1").Out, StringComparison.Ordinal);
        Assert.Contains("no revision 9; its last is 2", Store("export", Id(), "--revision", "9").Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_with_a_slip_is_refused_with_all_that_is_wrong_and_none_is_put_in()
    {
        var file = Path.Combine(_folder, "slip.yaml");
        File.WriteAllText(file, "headroom: 1\njob: x\nsurvey: {drops: {K-1: {from: a, length: far}}}\n");
        var result = Store("import", Repository.PathOf("examples/one-desk/job.yaml"), file);
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("slip.yaml:3:", result.Err, StringComparison.Ordinal);
        Assert.Contains("no job in it yet", Store("list").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_copy_is_a_store_and_both_are_sound()
    {
        Store("import", Repository.PathOf("examples/one-desk/job.yaml"));
        var other = Directory.CreateDirectory(Path.Combine(_folder, "other")).FullName;
        Assert.Equal(0, Store("copy", Path.Combine(other, "headroom.db")).ExitCode);
        Assert.Matches("sound, 1 job", TestDesk.Run(["store", "check", "--data", other]).Out);
        Assert.Matches("sound, 1 job", Store("check").Out);
        Assert.Contains("is there already", Store("copy", Path.Combine(other, "headroom.db")).Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_there_is_not_is_named_with_what_was_meant()
    {
        Store("import", Repository.PathOf("examples/one-desk/job.yaml"));
        Assert.Contains("did you mean one-switch-on-a-desk?", Store("export", "one-switch-on-desk").Err, StringComparison.Ordinal);
        Assert.Contains("cannot be made", TestDesk.Run(["store", "list", "--data", Repository.PathOf("README.md")]).Err, StringComparison.Ordinal);
    }

    // With nothing in the files of the store, a command that needed them could not go on.
    [Theory, InlineData("check"), InlineData("study")]
    public void Commands_that_only_read_job_files_do_not_load_the_store(string command)
    {
        Run.Headroom("--version");
        var published = Repository.PathOf("artifacts/run/" + File.ReadAllText(Repository.PathOf("artifacts/run/current")).Trim());
        var copy = Path.Combine(_folder, "copy");
        Copy(published, copy);
        foreach (var file in (string[])["Headroom.Store.dll", "Microsoft.Data.Sqlite.dll", "Npgsql.dll", "SQLitePCLRaw.core.dll"])
            File.WriteAllBytes(Path.Combine(copy, file), []);
        var job = Repository.PathOf("examples/one-desk/job.yaml");
        Assert.Equal(0, Run.Process(new ProcessStart("dotnet", Path.Combine(copy, "headroom.dll"), command, job)).ExitCode);
        Assert.Equal(2, Run.Process(new ProcessStart("dotnet", Path.Combine(copy, "headroom.dll"), "store", "list", "--data", _folder)).ExitCode);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var folder in Directory.GetDirectories(from))
            Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
    }

    private static (int, string) Told((int ExitCode, string Out, string Err) result) => (result.ExitCode, result.Err);

    private string Id() => Store("list").Out.Split('\n')[1].Trim().Split(' ')[0];

    private (int ExitCode, string Out, string Err) Store(params string[] words)
    {
        var result = TestDesk.Run(["store", .. words, "--data", Path.Combine(_folder, "data")]);
        return (result.ExitCode, result.Out, result.Err);
    }
}
