namespace Headroom.Cli;

/// <summary>Texts that are built into the command.</summary>
internal static class Embedded
{
    /// <summary>The text of a name.</summary>
    public static string Text(string name)
    {
        using var stream = typeof(Embedded).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
