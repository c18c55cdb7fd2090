namespace Headroom.Cli.Tests.Commands;

public sealed class NewTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("new").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_first_job_is_written_and_the_next_step_said()
    {
        var file = Path.Combine(_folder, "job.yaml");
        var result = TestDesk.Run(["new", file]);
        Assert.Equal(new(0, $"{file} is written. Next: headroom study {file}\n", ""), result);
        Assert.Equal(TestDesk.Run(["new"]).Out, File.ReadAllText(file));
    }

    [Fact]
    public void What_is_there_is_never_written_over()
    {
        var file = Path.Combine(_folder, "job.yaml");
        File.WriteAllText(file, "mine");
        var result = TestDesk.Run(["new", file]);
        Assert.Equal(new(2, "", $"headroom: {file} is there already and is left as it is; name another file\n"), result);
        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void A_folder_and_a_folder_that_is_missing_are_refused_with_advice()
    {
        Assert.Equal($"headroom: {_folder} is a folder; name the file in it: {Path.Combine(_folder, "job.yaml")}\n", TestDesk.Run(["new", _folder]).Err);
        var missing = Path.Combine(_folder, "none");
        Assert.Equal($"headroom: there is no folder {missing}; make it first\n", TestDesk.Run(["new", Path.Combine(missing, "job.yaml")]).Err);
    }

    [Fact]
    public void Without_a_file_it_is_printed() => Assert.Equal(TestDesk.Run(["new"]), TestDesk.Run(["new", "-"]));
}
