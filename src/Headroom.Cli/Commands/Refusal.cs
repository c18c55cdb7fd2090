namespace Headroom.Cli.Commands;

/// <summary>Why something could not be written, in words: the texts of the framework are not shipped with the command.</summary>
internal static class Refusal
{
    /// <summary>The reason with what to do about it.</summary>
    public static string Of(Exception reason) => reason switch
    {
        DirectoryNotFoundException => "its folder is not there; make it, or name another",
        UnauthorizedAccessException => "you may not write there; name another place, or have it allowed",
        PathTooLongException or ArgumentException or NotSupportedException => "that is no name of a file; name another",
        _ => "the disk refuses it; see whether it has room and whether another program holds the file",
    };
}
