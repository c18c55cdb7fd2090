namespace Headroom.Tests;

/// <summary>The source tree that the running tests were built from.</summary>
internal static class Repository
{
    private const string Mark = "Headroom.slnx";

    public static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>Full path of a file or folder, given from the root with forward slashes.</summary>
    public static string PathOf(string relative) => Path.Combine([Root, .. relative.Split('/')]);

    public static string Find(string folder)
    {
        for (var at = new DirectoryInfo(folder); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, Mark)))
                return at.FullName;
        }

        throw new DirectoryNotFoundException($"No {Mark} in {folder} or in any folder above it.");
    }
}
