using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Cabling;

/// <summary>What the study of the cables expects of readings at a drop: length, ohms of a pair, unbalance, loss of light.</summary>
internal sealed class CablingExpectations : IExpectations
{
    // Twisting and the wire's tolerance, as for the entries.
    private const double OhmsShare = 0.03;

    // How far a tester's length lies from a tape's: common practice, no source.
    private const double LengthShare = 0.05;

    private readonly CablingResult _result;
    private readonly Dictionary<string, CopperRun> _runs = [];
    private readonly Dictionary<string, FibreLink> _links = [];
    private readonly Dictionary<string, Reading> _highest = [];

    /// <summary>Makes runs and links findable by drop; of several readings of ohms at one drop the highest counts.</summary>
    public CablingExpectations(CablingResult result)
    {
        _result = result;
        if (result.Bound.Job.Readings.Count == 0)
            return;
        foreach (var run in result.Runs)
            _runs.TryAdd(run.Id, run);
        foreach (var link in result.Links)
            _links.TryAdd(link.Uplink.Drop ?? link.Name, link);
        foreach (var reading in result.Bound.Job.Readings)
        {
            if (reading.What == "ohms" && !(_highest.TryGetValue(reading.Where, out var other) && other.Value >= reading.Value))
                _highest[reading.Where] = reading;
        }
    }

    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        if (reading.What == "loss" && _links.TryGetValue(reading.Where, out var link))
            return new($"cabling/{link.Name}/loss", link.Decibels, 0, OwnQuantity: true, IsLimit: false,
                "dirt on an end, a tight bend, a bad splice, or a longer way than written: clean both ends and read again", "better than the worst case, as most links are");
        if (!_runs.TryGetValue(reading.Where, out var run))
            return null;
        return reading.What switch
        {
            "length" => Length(run),
            "ohms" => Ohms(run, reading),
            "unbalance" => Difference(run, reading),
            _ => null,
        };
    }

    private static Expectation Length(CopperRun run) => new(
        $"cabling/{run.Id}/length", run.Unknown == 0 ? run.LinkMetres : null, LengthShare * run.LinkMetres, OwnQuantity: true, IsLimit: false,
        "a longer way than written, or a coil left in the ceiling", "a shorter way than written, or a break on the way");

    // A tester reads one pair out and back where the cable is as warm as it is; the limit is for 20 °C.
    private Expectation Ohms(CopperRun run, Reading reading)
    {
        double? expected = 0;
        foreach (var piece in run.Run.Pieces)
            expected += piece.Cord ? 0 : 2 * piece.Ohms;
        return new($"cabling/{run.Id}/loop", expected, OhmsShare * expected ?? 0, ReferenceEquals(_highest.GetValueOrDefault(reading.Where), reading), IsLimit: false,
            "a longer, thinner, hotter or copper-clad run than written, or a poor contact: re-terminate and read each pair", "a shorter or thicker run than written");
    }

    private Expectation? Difference(CopperRun run, Reading reading)
    {
        if (reading.Pair is not { } pair || !_result.Readings.TryGetValue(run.Id, out var readings))
            return null;
        var most = Unbalance.WithinLimitOhms(readings.Loop(pair)?.Value ?? run.LinkLoopOhms ?? 0);
        return new($"cabling/{run.Id}/unbalance", 0, most, OwnQuantity: false, IsLimit: false, "a poor contact or a nick in one conductor: re-terminate the pair", "");
    }
}
