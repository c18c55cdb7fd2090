namespace Headroom.References.Tests;

/// <summary>The folder that holds the solution, found from where the tests run.</summary>
internal static class Repository
{
    internal static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Headroom.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("No folder above the tests holds Headroom.slnx.");
    }
}
