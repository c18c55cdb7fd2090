using Headroom.Domain.Findings;

namespace Headroom.Domain.Rules;

/// <summary>One id, one thing. A drop and an endpoint may share one: people label the outlet like the device on it.</summary>
internal static class IdRules
{
    /// <summary>Checks the survey's ids, the designs' ids, and those each design writes.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        var survey = names.Job.Survey;
        var places = new Claims(slips);
        places.Take(survey.Spaces, "space", s => (s.Id, s.At));
        places.Take(survey.Racks, "rack", r => (r.Id, r.At));
        places.Take(survey.Listeners, "listener", l => (l.Id, l.At));
        places.Take(survey.Noises, "noise", n => (n.Id, n.At));
        places.Take(survey.Screens, "screen", s => (s.Id, s.At));
        places.Take(survey.Partitions, "partition", p => (p.Id, p.At));
        var endpoints = places.Copy();
        places.Take(survey.Drops, "drop", d => (d.Id, d.At));
        endpoints.Take(survey.Endpoints, "endpoint", e => (e.Id, e.At));
        new Claims(slips).Take(survey.Pathways, "pathway", p => (p.Id, p.At));
        places.Take(survey.Fittings, "fitting", f => (f.Id, f.At));
        new Claims(slips).Take(names.Job.Designs, "design", d => (d.Id, d.At));
        foreach (var design in names.Job.Designs)
        {
            var units = new Claims(slips);
            units.Take(design.Switches, "switch", s => (s.Id, s.At));
            units.Take(design.Injectors, "injector", i => (i.Id, i.At));
            units.Take(design.Standby, "standby supply", s => (s.Id, s.At));
            units.Take(design.Fittings, "fitting", f => (f.Id, f.At));
        }
    }

    /// <summary>Checks that the units of a whole design share no id with each other's kinds or with the survey.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        foreach (var unit in view.Whole.Injectors.Where(i => view.Switches.ContainsKey(i.Id)))
            Twice(unit.Id, ("an injector", "a switch"), unit.At, slips);
        foreach (var unit in view.Whole.Standby.Where(s => view.Switches.ContainsKey(s.Id)))
            Twice(unit.Id, ("a standby supply", "a switch"), unit.At, slips);
        foreach (var unit in view.Whole.Standby.Where(s => view.Injectors.ContainsKey(s.Id)))
            Twice(unit.Id, ("a standby supply", "an injector"), unit.At, slips);
        foreach (var unit in view.Units)
        {
            if (InSurvey(unit.Id, names) is { } other)
                Twice(unit.Id, ("a unit", other), unit.At, slips);
        }
    }

    private static string? InSurvey(string id, JobNames names) =>
        names.Spaces.ContainsKey(id) ? "a space"
        : names.Racks.ContainsKey(id) ? "a rack"
        : names.Listeners.ContainsKey(id) ? "a listener"
        : names.Noises.ContainsKey(id) ? "a noise"
        : names.Drops.ContainsKey(id) ? "a drop"
        : names.Endpoints.ContainsKey(id) ? "an endpoint"
        : null;

    private static void Twice(string id, (string One, string Other) kinds, Place at, Slips slips) => slips.Add(
        RuleCodes.DuplicateId,
        at,
        new($"'{id}' is {kinds.One} and also {kinds.Other}", "one id stands for one thing", "Give one of the two another id."),
        id);

    private sealed class Claims(Slips slips)
    {
        private Dictionary<string, (string Kind, Place At)> taken = [];

        public Claims Copy() => new(slips) { taken = new(taken) };

        public void Take<T>(IReadOnlyList<T> things, string kind, Func<T, (string Id, Place At)> tell)
        {
            foreach (var thing in things)
            {
                var (id, at) = tell(thing);
                if (!taken.TryAdd(id, (kind, at)))
                    Refuse(id, kind, at);
            }
        }

        private void Refuse(string id, string kind, Place at)
        {
            var (first, where) = taken[id];
            var said = where.Line == 0 ? "" : where.File == at.File ? $" in line {where.Line}" : $" in {where}";
            slips.Add(
                RuleCodes.DuplicateId,
                at,
                new($"'{id}' is a {kind}, and a {first}{said} has the same id", "one id stands for one thing", "Give one of the two another id."),
                id);
        }
    }
}
