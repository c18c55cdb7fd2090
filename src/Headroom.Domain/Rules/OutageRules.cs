using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What is kept in an outage exists, and what matters less is switched off first.</summary>
internal static class OutageRules
{
    private static readonly string[] Kinds = ["phone", "access point", "camera", "door station", "radio", "switch", "other"];

    /// <summary>Checks what the policy keeps.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        foreach (var name in names.Job.Policy.Outage.Keep)
        {
            if (!Kinds.Contains(name) && !names.Endpoints.ContainsKey(name) && !IsSwitch(name, names))
                slips.Unknown(RuleCodes.UnknownKept, names.Job.Policy.At, new("kind of endpoint, endpoint or switch", name, "what is kept in an outage"), [.. Kinds, .. names.Endpoints.Keys]);
        }
    }

    /// <summary>Checks the stages of the standby supplies of a design.</summary>
    public static void Check(DesignView view, Slips slips)
    {
        foreach (var unit in view.Whole.Standby)
        {
            var low = unit.Sheds?.FirstOrDefault(stage => stage.Priority == Priority.Low);
            var high = unit.Sheds?.FirstOrDefault(stage => stage.Priority == Priority.High);
            if (high is null || (low is not null && low.After.Value.Value <= high.After.Value.Value))
                continue;
            var said = new Said(
                $"{unit.Id} switches off ports of high priority after {high.After.Written} and those of low priority {(low is null ? "never" : $"after {low.After.Written}")}",
                "low comes no later than high",
                "Turn the two round, or write 'low' as well.");
            slips.Add(RuleCodes.ShedOrder, high.After.At, said);
        }
    }

    private static bool IsSwitch(string name, JobNames names) => names.Job.Designs.Any(design => design.Switches.Any(unit => unit.Id == name));
}
