namespace Headroom.Cli.Text;

/// <summary>How an explanation is wanted.</summary>
/// <param name="File">The job file as findings and origins name it.</param>
/// <param name="Units">The units shown.</param>
internal sealed record ExplainRequest(string File, ShownUnits Units)
{
    /// <summary>A text in which the job file goes by its name alone: its folder is what the person has just typed.</summary>
    public string Shorten(string text)
    {
        var name = File[(File.LastIndexOfAny(['/', '\\']) + 1)..];
        return name.Length is 0 || name.Length == File.Length ? text : text.Replace(File + ":", name + ":", StringComparison.Ordinal);
    }
}
