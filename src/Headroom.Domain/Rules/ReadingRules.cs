using System.Globalization;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Readings were taken at things the job knows, once, in our time.</summary>
internal static class ReadingRules
{
    // Cable runs, ports and instruments of this trade are younger: an older date is a mistyped year.
    private const int EarliestYear = 2000;

    /// <summary>Checks all readings against the survey and all designs.</summary>
    public static void Check(JobNames names, IReadOnlyList<DesignView> views, Slips slips)
    {
        var seen = new HashSet<(string, string, string, DateOnly?, string?, string?)>();
        var known = new Lazy<IReadOnlyList<string>>(() => Known(names, views));
        foreach (var reading in names.Job.Readings)
        {
            if (!IsPlace(reading.Where, names))
                Place(reading, views, known, slips);
            if (reading.On is { } day && day.Year < EarliestYear)
                slips.Add(RuleCodes.OldReading, reading.At, Old(reading, day));
            var rest = string.Join('|', reading.Method, reading.Direction, reading.Pair);
            if (!seen.Add((reading.What, reading.Where, reading.Written, reading.On, reading.While, rest)))
                slips.Add(RuleCodes.ReadingTwice, reading.At, Twice(reading));
        }
    }

    private static void Place(Reading reading, IReadOnlyList<DesignView> views, Lazy<IReadOnlyList<string>> known, Slips slips)
    {
        var at = reading.Where;
        if (views.Any(v => IsUnit(at, v)))
            return;
        var slash = at.LastIndexOf('/');
        var unit = slash > 0 ? at[..slash] : at;
        if (slash > 0 && views.Any(v => IsUnit(unit, v)))
            Port(reading, (unit, at[(slash + 1)..]), views, slips);
        else
            slips.Unknown(RuleCodes.UnknownReadingPlace, reading.At, new("place", unit, $"the {reading.What} reading"), known.Value);
    }

    private static void Port(Reading reading, (string Unit, string Port) at, IReadOnlyList<DesignView> views, Slips slips)
    {
        if (int.TryParse(at.Port, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && views.Any(v => HasPort(at.Unit, port, v)))
            return;
        var said = new Said(
            $"the {reading.What} reading was taken at {reading.Where}",
            $"no design has a {at.Unit} with a port {at.Port}",
            "Correct the port number.");
        slips.Add(RuleCodes.NoSuchPort, reading.At, said);
    }

    private static bool HasPort(string id, int port, DesignView view) =>
        view.Switches.TryGetValue(id, out var unit)
            ? view.ModelOf(unit) is not { } model || DesignView.GroupOf(model, port) is not null
            : view.Injectors.TryGetValue(id, out var injector)
              && port >= 1 && (view.ModelOf(injector) is not { } its || port <= its.Ports);

    private static bool IsPlace(string id, JobNames names) =>
        names.Endpoints.ContainsKey(id) || names.Drops.ContainsKey(id) || names.Spaces.ContainsKey(id)
        || names.Listeners.ContainsKey(id) || names.Racks.ContainsKey(id) || names.Noises.ContainsKey(id)
        || (names.Job.Survey.Lines.Count > 0 && names.Job.Survey.Lines.Any(line => line.Id == id));

    private static bool IsUnit(string id, DesignView view) =>
        view.Switches.ContainsKey(id) || view.Injectors.ContainsKey(id) || view.Standby.ContainsKey(id);

    private static List<string> Known(JobNames names, IReadOnlyList<DesignView> views) =>
    [
        .. views.SelectMany(v => v.PortUnits.Concat(v.Standby.Keys))
        .Concat(names.Standings).Concat(names.Listeners.Keys).Concat(names.Noises.Keys).Concat(names.Job.Survey.Lines.Select(line => line.Id)).Concat(names.Patchable).Distinct(),
    ];

    private static Said Old(Reading reading, DateOnly day) => new(
        $"the {reading.What} reading at {reading.Where} is dated {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}",
        $"readings are from {EarliestYear} or later",
        "Is the year right?");

    private static Said Twice(Reading reading) => new(
        $"the {reading.What} reading '{reading.Written}' at {reading.Where} is written twice",
        "a reading is written once",
        "Take one out, or say what differs: the day, the pair, or what was going on.");
}
