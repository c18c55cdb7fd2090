using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>The rules that make a job well-formed: what is named exists, what is used once is used once, what stands somewhere fits.</summary>
public static class JobRules
{
    /// <summary>Checks a job, all of its designs, in time that grows with its size.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">The models it may use.</param>
    /// <returns>All findings; empty when nothing is wrong and nothing to be asked.</returns>
    public static IReadOnlyList<Finding> Check(Job job, Catalogue catalogue) => Check(job, catalogue, new Slips());

    /// <summary>Checks what can be checked of a job of which parts could not be read: names that lead nowhere, whatever those parts say.</summary>
    /// <param name="job">The parts of the job that could be read.</param>
    /// <param name="catalogue">The models it may use.</param>
    /// <param name="mayBeThere">Says of a name whether a part that could not be read may have it.</param>
    /// <returns>The findings about names; empty when none leads nowhere.</returns>
    public static IReadOnlyList<Finding> CheckNames(Job job, Catalogue catalogue, Func<string, bool> mayBeThere) => Check(job, catalogue, new Slips(mayBeThere));

    private static IReadOnlyList<Finding> Check(Job job, Catalogue catalogue, Slips slips)
    {
        var names = new JobNames(job, catalogue);
        IdRules.Check(names, slips);
        SurveyNameRules.Check(names, slips);
        SpaceRules.Check(names, slips);
        SoundRules.Check(names, slips);
        RangeRules.Check(job, slips);
        CableRules.Check(names, slips);
        PolicyRules.Check(job.Policy, slips);
        YearsRules.Check(job.Policy, catalogue, slips);
        TrafficRules.Check(names, slips);
        OutageRules.Check(names, slips);
        AddressRules.Check(names, slips);
        MoneyRules.Check(job, slips);
        LineageRules.Check(names, slips);
        var views = FromTheRoots([.. names.Designs.Keys.Select(id => DesignLineage.Whole(job, id)).OfType<Design>().Select(whole => new DesignView(whole, names))]);
        foreach (var view in views)
            CheckDesign(view, names, slips);
        slips.End();
        ReadingRules.Check(names, views, slips);
        PriceRules.Ask(names, slips);
        TrafficRules.Ask(names, views, slips);
        Ask(names, views, slips);
        return slips.Findings;
    }

    // A slip is told of the design that makes it, before those that are like it. Not by a query: ordering by a number would be compiled at each start.
    private static List<DesignView> FromTheRoots(List<DesignView> all)
    {
        var views = new List<DesignView>(all.Count);
        for (var above = 0; views.Count < all.Count; above++)
        {
            foreach (var view in all)
            {
                if (view.Likes.Count == above)
                    views.Add(view);
            }
        }

        return views;
    }

    private static void CheckDesign(DesignView view, JobNames names, Slips slips)
    {
        slips.Begin(view.Whole.Id, view.Likes);
        IdRules.Check(view, names, slips);
        UnitRules.Check(view, names, slips);
        OutageRules.Check(view, slips);
        SwitchRules.Check(view, names, slips);
        PatchRules.Check(view, names, slips);
        PortRules.Check(view, slips);
        UplinkRules.Check(view, names, slips);
        ModuleRules.Check(view, names, slips);
        RackRules.Check(view, names, slips);
        StackRules.Check(view, slips);
        if (view.Whole.Building is { } building)
            BuildingRules.Check(building, (view.Whole, names), slips);
    }

    private static void Ask(JobNames names, IReadOnlyList<DesignView> views, Slips slips)
    {
        RunQuestions.Ask(names, slips);
        NumberingQuestions.Ask(names.Job.Survey, slips);
        EndpointQuestions.Ask(names, slips);
        SpaceQuestions.Ask(names, slips);
        if (views.FirstOrDefault(v => v.Whole.Id == names.Job.Chosen) is { } chosen)
            EndpointQuestions.AskPatched(chosen, names, slips);
    }
}
