using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Keeps short texts that stand for many things from filling the memory.</summary>
internal static class Budget
{
    /// <summary>The most things that ranges and counts of one file may stand for together.</summary>
    public const int Most = 200_000;

    /// <summary>Counts things; false, with a finding, when there are too many.</summary>
    public static bool Spend(int things, YamlScalar scalar, FieldReader reader)
    {
        reader.Counted += things;
        if (reader.Counted <= Most)
            return true;
        reader.Refuse(
            JobSlips.TooManyByRange, scalar.At, $"'{Words.Short(scalar.Text)}' brings the things in this file to {reader.Counted}", $"at most {Most}", "see whether a number has a digit too many");
        return false;
    }
}
