using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>The order in which the sections of a job file stand.</summary>
internal static class SectionOrder
{
    private static readonly string[] Order = ["headroom", "job", "client", "policy", "sheets", "survey", "chosen", "designs", "prices", "money", "readings", "overrulings"];

    /// <summary>Where a section comes, from 0; an unknown one comes first, so that nothing is put in front of it.</summary>
    public static int Of(string key) => Array.FindIndex(Order, known => YamlKey.Same(known, key));
}
