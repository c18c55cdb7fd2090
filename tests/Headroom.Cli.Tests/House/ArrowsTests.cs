using System.Reflection;
using System.Xml.Linq;

namespace Headroom.Cli.Tests.House;

public sealed class ArrowsTests
{
    // What each project may use beyond the base library, in the order of the plan: arrows point upwards in this list only.
    private static readonly Dictionary<string, string[]> Plan = new()
    {
        ["Headroom.Domain"] = [],
        ["Headroom.Engineering"] = ["Headroom.Domain", "MathNet.Numerics"],
        ["Headroom.Planning"] = ["Headroom.Domain", "Headroom.Engineering", "Google.OrTools", "Google.Protobuf"],
        ["Headroom.JobFiles"] = ["Headroom.Domain", "DocumentFormat.OpenXml", "DocumentFormat.OpenXml.Framework", "Sep", "YamlDotNet"],
        ["Headroom.Documents"] = ["Headroom.Domain", "Headroom.Engineering", "PDFsharp", "PdfSharp", "SpreadCheetah", "ZXing.Net", "zxing"],
        ["Headroom.Store"] = ["Microsoft.Data.Sqlite", "Npgsql"],
        ["Headroom.Desk"] = ["Headroom.Domain", "Headroom.Engineering", "Headroom.JobFiles", "Headroom.Documents", "Headroom.Planning", "Headroom.Store"],
        ["Headroom.Cli"] = ["Headroom.Domain", "Headroom.Engineering", "Headroom.JobFiles", "Headroom.Documents", "Headroom.Planning", "Headroom.Store", "Headroom.Desk", "System.CommandLine"],
    };

    private static readonly Dictionary<string, string> AssemblyNames = new() { ["Headroom.Cli"] = "headroom" };

    private static readonly string BaseLibrary = Path.GetDirectoryName(typeof(object).Assembly.Location)!;

    public static TheoryData<string> Projects => [.. Plan.Keys];

    [Theory, MemberData(nameof(Projects))]
    public void The_compiled_code_uses_only_what_the_plan_allows(string project) => Assert.All(
        Assembly.Load(AssemblyNames.GetValueOrDefault(project, project)).GetReferencedAssemblies().Select(a => a.Name!),
        used => Assert.True(Plan[project].Contains(used) || IsBaseLibrary(used) || (project == "Headroom.Desk" && IsWebFramework(used)), $"{project} uses {used}"));

    // A reference that no code uses yet is not in the compiled assembly; it would be an open door all the same.
    [Theory, MemberData(nameof(Projects))]
    public void The_project_file_refers_only_to_what_the_plan_allows(string project) => Assert.All(
        References(project), used => Assert.True(Plan[project].Contains(used), $"{project}.csproj refers to {used}"));

    [Fact]
    public void Every_project_has_its_place_in_the_plan() => Assert.Equal(
        Directory.GetFiles(Repository.PathOf("src"), "*.csproj", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension).Order(),
        Plan.Keys.Order());

    [Fact]
    public void No_arrow_of_the_plan_points_back()
    {
        var projects = Plan.Keys.ToList();
        Assert.All(projects, from => Assert.All(
            Plan[from].Where(Plan.ContainsKey), to => Assert.True(projects.IndexOf(to) < projects.IndexOf(from), $"{from} uses {to}")));
    }

    // By its file, not by "System." in its name: System.CommandLine is a package like any other.
    // The web framework lies beside it, in a folder of the same version, and is the desk's alone.
    private static bool IsBaseLibrary(string assembly) => File.Exists(Path.Combine(BaseLibrary, assembly + ".dll"));

    private static bool IsWebFramework(string assembly) =>
        Directory.GetDirectories(Path.Combine(BaseLibrary, "..", "..", "Microsoft.AspNetCore.App")).Any(version => File.Exists(Path.Combine(version, assembly + ".dll")));

    private static IEnumerable<string> References(string project)
    {
        var file = XDocument.Load(Repository.PathOf($"src/{project}/{project}.csproj"));
        var projects = file.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(Included(r)));
        return projects.Concat(file.Descendants("PackageReference").Select(Included));
    }

    private static string Included(XElement reference) => reference.Attribute("Include")!.Value.Replace('\\', '/');
}
