using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Changes;

/// <summary>Says where a thing of a design is written, so that one key of it can be changed.</summary>
public static class UnitMoves
{
    private static readonly string[] Sections = ["switches", "injectors", "standby", "fittings"];

    /// <summary>The change that gives a thing of a design another value behind one of its keys.</summary>
    /// <param name="outline">The job.</param>
    /// <param name="job">The job, read.</param>
    /// <param name="design">The design.</param>
    /// <param name="thing">The thing: a switch, injector, standby supply or fitting of the design, or a fitting of the survey.</param>
    /// <param name="field">The key and what is to stand behind it; null to take the key out.</param>
    /// <returns>The change; null when there is no such thing.</returns>
    public static FieldChange? Of(JobOutline outline, Job job, string design, string thing, (string Key, string? Value) field)
    {
        if (outline.ValueAt(["survey", "fittings", thing]) is not null)
            return Field(outline, ["survey", "fittings", thing, field.Key], field.Value);
        for (var next = design; next is not null; next = job.Designs.FirstOrDefault(one => one.Id == next)?.Like)
        {
            foreach (var section in Sections)
            {
                if (outline.ValueAt(["designs", next, section, thing]) is not { } written)
                    continue;
                string[] mine = ["designs", design, section, thing];
                // A fitting stands for itself: of another design's nothing is taken over.
                return next != design && section == "fittings" ? new(mine, null, With(written, field)) : Field(outline, [.. mine, field.Key], field.Value);
            }
        }

        return null;
    }

    private static FieldChange Field(JobOutline outline, string[] path, string? value) => new(path, outline.ValueAt(path), value);

    private static string With(string written, (string Key, string? Value) field)
    {
        var edit = JobFieldEditor.Put("thing: " + written, [new(["thing", field.Key], null, field.Value)]);
        return edit.Text is { } text ? text["thing: ".Length..] : written;
    }
}
