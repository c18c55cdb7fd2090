using System.Text;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Files;

namespace Headroom.Cli.Commands;

/// <summary>Writes a job file that was edited, unless somebody else wrote it meanwhile.</summary>
internal static class JobWriting
{
    /// <summary>Writes it; says what stands in the way, or null when it is written.</summary>
    /// <param name="job">The file.</param>
    /// <param name="before">Its text as it was when it was read.</param>
    /// <param name="text">The text to be written.</param>
    public static string? Complaint(string job, string before, string text)
    {
        try
        {
            if (TextFile.Read(job).Value != before)
                return $"{job} was changed by somebody else meanwhile and is left as it is; try again";
            SafeFile.Replace(job, text);
            return null;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or EncoderFallbackException)
        {
            return $"{job} cannot be written and is as it was ({reason.Message.TrimEnd('.')})";
        }
    }
}
