using System.Xml.Linq;
using Headroom.Documents.Drawings;

namespace Headroom.Cli.Tests.Commands;

public sealed class DrawTests
{
    private static readonly string Barn = Repository.PathOf("examples/barn-vets/job.yaml");
    private static readonly string Desk = Repository.PathOf("examples/one-desk/job.yaml");

    [Fact]
    public void Every_drawing_is_a_file_that_is_told_and_nothing_else_is_left_in_the_folder()
    {
        using var folder = new NewFolder();
        var result = TestDesk.Run(["draw", Barn, "--out", folder.Path]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        var lines = result.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Directory.GetFileSystemEntries(folder.Path).Order(), lines.Where(line => !line.StartsWith("not drawn", StringComparison.Ordinal)).Order());
        Assert.All(Directory.GetFiles(folder.Path), file => Assert.Equal("svg", XDocument.Load(file).Root!.Name.LocalName));
        Assert.Equal("not drawn: front and turning, for the planner takes its time: name them with --only", lines[^1]);
    }

    [Fact]
    public void What_cannot_be_drawn_is_said_with_its_reason()
    {
        using var folder = new NewFolder();
        var result = TestDesk.Run(["draw", Desk, "--out", folder.Path, "--only", "rack, face"]);
        Assert.Equal(0, result.ExitCode);
        Assert.Equal($"{Path.Combine(folder.Path, "face-sw-1.svg")}\nnot drawn: rack, nothing stands in a rack\n", result.Out);
    }

    [Fact]
    public void Drawings_of_a_plan_are_planned_first()
    {
        using var folder = new NewFolder();
        var result = TestDesk.Run(["draw", Desk, "--out", folder.Path, "--only", "front"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Contains("Cost against sound", File.ReadAllText(Path.Combine(folder.Path, "front.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("draw")]
    [InlineData("papers")]
    public void A_folder_that_cannot_be_written_to_is_refused_and_nothing_is_left_half_written(string command)
    {
        using var folder = new NewFolder();
        var file = Path.Combine(folder.Path, "taken");
        File.WriteAllText(file, "this is a file");
        foreach (var into in new[] { file, Path.Combine(file, "below") })
        {
            var result = TestDesk.Run([command, Desk, "--out", into]);
            Assert.Equal((2, ""), (result.ExitCode, result.Out));
            Assert.StartsWith("headroom: ", result.Err, StringComparison.Ordinal);
            Assert.Contains(into, result.Err, StringComparison.Ordinal);
        }

        Assert.Equal("this is a file", File.ReadAllText(file));
        Assert.Equal([file], Directory.GetFileSystemEntries(folder.Path));
    }

    // A folder in the place of a file stops the move half-way: what was moved is whole, and nothing aside is left.
    [Fact]
    public void What_stands_in_the_way_of_one_file_leaves_no_part_of_another()
    {
        using var folder = new NewFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "restart.svg", "in the way"));
        var result = TestDesk.Run(["draw", Desk, "--out", folder.Path]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder.Path), entry => Path.GetFileName(entry).StartsWith(".new", StringComparison.Ordinal));
        Assert.All(Directory.GetFiles(folder.Path), file => Assert.NotNull(XDocument.Load(file).Root));
    }

    [Theory]
    [InlineData("draw x --out y --only rak", "headroom: --only is rack, face, room, restart, discharge, one-line, uplinks, fan, warming, front or turning, not 'rak'; did you mean rack?")]
    [InlineData("papers x --out y --paper A5", "headroom: --paper is A4 or Letter, not 'A5'; did you mean A4?")]
    [InlineData("draw x --out y --time soon", "headroom: --time is a number of seconds above 0, not 'soon'")]
    [InlineData("draw x", "headroom: draw needs --out DIR, the folder to write into")]
    [InlineData("papers x", "headroom: papers needs --out DIR, the folder to write into")]
    public void A_slip_is_refused_with_what_is_allowed(string typed, string complaint)
    {
        var result = TestDesk.Run(typed.Split(' '));
        Assert.Equal((2, "", complaint), (result.ExitCode, result.Out, result.Err.Split('\n')[0]));
    }

    [Fact]
    public void The_page_about_drawings_tells_every_kind()
    {
        var page = File.ReadAllText(Repository.PathOf("docs/drawings.md"));
        Assert.All(DrawingList.All, kind => Assert.Contains($"| `{kind.Id}` |", page, StringComparison.Ordinal));
        var papers = File.ReadAllText(Repository.PathOf("docs/papers.md"));
        Assert.All(Documents.Papers.PaperList.All, kind => Assert.Contains($"| `{kind.Id}` |", papers, StringComparison.Ordinal));
    }

    private sealed class NewFolder : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("headroom-draw").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}
