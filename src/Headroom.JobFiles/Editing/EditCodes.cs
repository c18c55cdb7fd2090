namespace Headroom.JobFiles.Editing;

/// <summary>The codes of findings about a change that was to be made in a job file.</summary>
internal static class EditCodes
{
    public static readonly FindingCode NoMap = new("EDT001", "The text is no map of keys, so nothing can be put into it.");
    public static readonly FindingCode OtherSection = new("EDT002", "A section holds something other than it should, so nothing can be put into it.");
    public static readonly FindingCode NoDesign = new("EDT003", "What was to be put in is no design.");
    public static readonly FindingCode NotSafe = new("EDT004", "The change would alter more of the file than it should, so it was not made.");
    public static readonly FindingCode NoValue = new("EDT005", "What was typed for a field is no value: a brace, bracket or quotation mark is open.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<FindingCode> All { get; } = [NoMap, OtherSection, NoDesign, NotSafe, NoValue];
}
