using System.Globalization;

namespace Headroom.JobFiles.Fields;

/// <summary>A kind of slip in what a file says. The same slip has the same number in a job (<c>JOB</c>) and in a catalogue (<c>CAT</c>).</summary>
internal sealed record Slip(int Number, string Meaning)
{
    /// <summary>The code in a kind of file.</summary>
    public string Code(string prefix) => prefix + Number.ToString("000", CultureInfo.InvariantCulture);
}
